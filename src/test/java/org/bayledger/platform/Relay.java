package org.bayledger.platform;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;

/** A wire between the service and PostgreSQL that can be cut at a chosen point. */
final class Relay implements AutoCloseable {

    private static final int CHUNK = 4096;
    private static final long NEVER = Long.MAX_VALUE;

    private final URI server;
    private final ServerSocket door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    private final List<Socket> sockets = new CopyOnWriteArrayList<>();
    private final AtomicLong left = new AtomicLong(NEVER);
    private volatile boolean cutAtCommit;

    Relay(TestDatabase database) throws IOException {
        server = URI.create(database.url().substring("jdbc:".length()));
        run(this::accept);
    }

    /** The database behind the wire. */
    TestDatabase database(TestDatabase database) {
        return new TestDatabase(
                "jdbc:postgresql://127.0.0.1:" + door.getLocalPort() + server.getPath(),
                database.superuser(),
                database.superuserPassword());
    }

    /** The next COMMIT is carried out, and the wire is cut before its answer comes through. */
    void cutAtCommit() {
        cutAtCommit = true;
    }

    /** The wire is cut once the server has sent so many bytes more, and stays cut. */
    void cutAfter(long bytes) {
        left.set(bytes);
    }

    /** Connections come through again. */
    void mend() {
        left.set(NEVER);
    }

    private void accept() throws IOException {
        while (true) {
            Socket client = door.accept();
            if (left.get() <= 0) {
                client.close();
                continue;
            }
            Socket behind = new Socket(server.getHost(), server.getPort());
            sockets.addAll(List.of(client, behind));
            Wire wire = new Wire(client, behind);
            run(wire::forth);
            run(wire::back);
        }
    }

    /** One connection. */
    private final class Wire {

        private final Socket client;
        private final Socket behind;
        private volatile boolean swallows;

        Wire(Socket client, Socket behind) {
            this.client = client;
            this.behind = behind;
        }

        void forth() throws IOException {
            byte[] chunk = new byte[CHUNK];
            InputStream in = client.getInputStream();
            for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
                if (cutAtCommit && new String(chunk, 0, read, ISO_8859_1).contains("COMMIT")) {
                    cutAtCommit = false;
                    swallows = true;
                }
                behind.getOutputStream().write(chunk, 0, read);
            }
            cut();
        }

        void back() throws IOException {
            byte[] chunk = new byte[CHUNK];
            InputStream in = behind.getInputStream();
            for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
                if (swallows || left.addAndGet(-read) <= 0) {
                    break;
                }
                client.getOutputStream().write(chunk, 0, read);
            }
            cut();
        }

        private void cut() throws IOException {
            client.close();
            behind.close();
        }
    }

    private interface Work {
        void run() throws IOException;
    }

    private static void run(Work work) {
        Thread thread =
                new Thread(
                        () -> {
                            try {
                                work.run();
                            } catch (IOException cut) {
                                // which is what it is for
                            }
                        });
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() throws IOException {
        door.close();
        for (Socket socket : sockets) {
            socket.close();
        }
    }
}
