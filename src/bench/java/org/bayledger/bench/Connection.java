package org.bayledger.bench;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** One kept connection to a service on this machine: little work for whoever drives the load. */
final class Connection implements AutoCloseable {

    private final int port;
    private Socket socket;
    private InputStream in;
    private OutputStream out;

    Connection(int port) throws IOException {
        this.port = port;
        open();
    }

    private void open() throws IOException {
        socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setTcpNoDelay(true);
        in = new BufferedInputStream(socket.getInputStream(), 1 << 16);
        out = socket.getOutputStream();
    }

    /** A request that posts JSON, as bytes. */
    static byte[] post(String path, byte[] body) {
        byte[] head =
                ("POST "
                                + path
                                + " HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json"
                                + "\r\nContent-Length: "
                                + body.length
                                + "\r\n\r\n")
                        .getBytes(StandardCharsets.US_ASCII);
        byte[] request = new byte[head.length + body.length];
        System.arraycopy(head, 0, request, 0, head.length);
        System.arraycopy(body, 0, request, head.length, body.length);
        return request;
    }

    /** Sends a request, reads its answer to the end and gives its length in bytes. */
    long send(byte[] request) throws IOException {
        if (socket.isClosed()) {
            open();
        }
        out.write(request);
        out.flush();
        String status = line();
        if (!status.contains(" 200 ")) {
            throw new IOException(status);
        }
        long length = -1;
        boolean last = false;
        for (String header = line(); !header.isEmpty(); header = line()) {
            String lower = header.toLowerCase(Locale.ROOT);
            last |= lower.startsWith("connection: close");
            if (lower.startsWith("content-length:")) {
                length = Long.parseLong(lower.substring(lower.indexOf(':') + 1).strip());
            }
        }
        long read = length >= 0 ? whole(length) : chunks();
        if (last) {
            socket.close();
        }
        return read;
    }

    private long whole(long length) throws IOException {
        in.skipNBytes(length);
        return length;
    }

    private long chunks() throws IOException {
        long sum = 0;
        for (long chunk = chunk(); chunk > 0; chunk = chunk()) {
            in.skipNBytes(chunk + 2);
            sum += chunk;
        }
        line();
        return sum;
    }

    private long chunk() throws IOException {
        return Long.parseLong(line().strip(), 16);
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int c = in.read(); c != '\n'; c = in.read()) {
            if (c < 0) {
                throw new IOException("the service hung up");
            }
            if (c != '\r') {
                line.append((char) c);
            }
        }
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
