package org.bayledger.contract;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.util.Locale;

/** Sends bytes that no HTTP client would send. */
final class RawHttp {

    private RawHttp() {}

    /**
     * What came back.
     *
     * @param status HTTP status
     * @param head status line and header fields
     * @param body the body
     */
    record Answer(int status, String head, String body) {

        boolean isProblem() {
            return head.toLowerCase(Locale.ROOT).contains("content-type: application/problem+json");
        }
    }

    /** A request with a JSON body to the framing check. */
    static byte[] post(byte[] body, String... headers) {
        return post("/v1/checks/framing", body, headers);
    }

    static byte[] post(String target, byte[] body, String... headers) {
        StringBuilder head =
                new StringBuilder("POST " + target + " HTTP/1.1\r\nHost: localhost\r\n");
        head.append("Connection: close\r\nContent-Length: ").append(body.length).append("\r\n");
        boolean typed = false;
        for (String header : headers) {
            typed |= header.startsWith("Content-Type:");
            head.append(header).append("\r\n");
        }
        head.append(typed ? "\r\n" : "Content-Type: application/json\r\n\r\n");
        return join(head.toString().getBytes(ISO_8859_1), body);
    }

    /** A request without a body. */
    static byte[] get(String target) {
        return line("GET " + target + " HTTP/1.1");
    }

    static byte[] line(String requestLine, String... headers) {
        String fields = headers.length == 0 ? "" : String.join("\r\n", headers) + "\r\n";
        return (requestLine + "\r\nHost: localhost\r\nConnection: close\r\n" + fields + "\r\n")
                .getBytes(UTF_8);
    }

    static byte[] join(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    static Answer send(int port, byte[] request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(60_000);
            try {
                socket.getOutputStream().write(request);
                socket.shutdownOutput();
            } catch (IOException closedEarly) {
                // a refused body is not read to its end; what was answered can still be read
            }
            String text = new String(socket.getInputStream().readAllBytes(), UTF_8);
            int end = text.indexOf("\r\n\r\n");
            String head = text.substring(0, end);
            String body = text.substring(end + 4);
            boolean chunked = head.toLowerCase(Locale.ROOT).contains("transfer-encoding: chunked");
            return new Answer(
                    Integer.parseInt(head.substring(9, 12)), head, chunked ? joined(body) : body);
        }
    }

    private static String joined(String chunks) {
        byte[] bytes = chunks.getBytes(UTF_8);
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        int at = 0;
        while (at < bytes.length) {
            int eol = at;
            while (bytes[eol] != '\r') {
                eol++;
            }
            int size = Integer.parseInt(new String(bytes, at, eol - at, ISO_8859_1).strip(), 16);
            if (size == 0) {
                break;
            }
            body.write(bytes, eol + 2, size);
            at = eol + 2 + size + 2;
        }
        return body.toString(UTF_8);
    }
}
