import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Verifies the export of a project with nothing but the export and a JDK (17 or later):
 *
 * <pre>java VerifyExport.java export.ndjson [size headHash]</pre>
 *
 * <p>The size and head hash of a checkpoint that was kept elsewhere show whether the chain was cut
 * short or rewritten since; a chain alone can't show that. Ends with 0 where the chain is intact, 1
 * where it is not, with the first revision that is not what was recorded, and 2 where the file (or
 * the command) can't be read.
 */
public final class VerifyExport {

    private static final String FORMAT = "bayledger-export-1";
    private static final String PROJECT = "bayledger-project-1";
    private static final String MANIFEST = "bayledger-revision-1";
    private static final String HASH = "[0-9a-f]{64}";

    /** The chain is not what was recorded, from this revision on. */
    private static final class Broken extends Exception {
        private static final long serialVersionUID = 1L;
        private final int revision;

        Broken(int revision, String reason) {
            super(reason);
            this.revision = revision;
        }
    }

    /** The file is no export of this format. */
    private static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1L;

        Unreadable(String reason) {
            super(reason);
        }
    }

    private final int heldSize;
    private final String heldHash;

    private Map<String, Object> project;
    private int size;
    private String head = "";
    private String recordedAt;
    private boolean ended;
    private boolean held;

    /** Contents that are what their hashes say, with the verdict that each states, if any. */
    private final Map<String, String> sound = new HashMap<>();

    /** Contents given since the last revision, which the next one has to name. */
    private final Set<String> fresh = new LinkedHashSet<>();

    private final Map<String, String> unsound = new HashMap<>();

    private VerifyExport(int heldSize, String heldHash) {
        this.heldSize = heldSize;
        this.heldHash = heldHash;
    }

    /** Verifies and ends with the code that says how it went. */
    public static void main(String[] arguments) {
        System.exit(run(arguments, System.out));
    }

    /** Verifies, prints what was found, and gives the code to end with. */
    public static int run(String[] arguments, PrintStream out) {
        boolean checkpoint = arguments.length == 3;
        if (arguments.length != 1
                && !(checkpoint
                        && arguments[1].matches("[0-9]{1,9}")
                        && arguments[2].matches(HASH))) {
            out.println("usage: java VerifyExport.java export.ndjson [size headHash]");
            return 2;
        }
        VerifyExport export =
                checkpoint
                        ? new VerifyExport(Integer.parseInt(arguments[1]), arguments[2])
                        : new VerifyExport(-1, "");
        int line = 0;
        try (InputStream in =
                new BufferedInputStream(Files.newInputStream(Path.of(arguments[0])))) {
            for (byte[] bytes = line(in); bytes != null; bytes = line(in)) {
                line++;
                export.read(bytes);
            }
            export.finish();
        } catch (Broken broken) {
            out.println("broken at revision " + broken.revision + ": " + broken.getMessage());
            return 1;
        } catch (Unreadable unreadable) {
            out.println("unreadable at line " + line + ": " + unreadable.getMessage());
            return 2;
        } catch (IOException | RuntimeException failed) {
            out.println("unreadable after line " + line + ": " + failed);
            return 2;
        }
        out.println("intact: " + export.size + " revisions, head " + export.head);
        out.println(
                checkpoint
                        ? "The held checkpoint lies on this chain."
                        : "No held checkpoint was given: a chain that was cut short or rewritten"
                                + " whole would look like this too.");
        return 0;
    }

    /** The next line without its end; null after the last. */
    private static byte[] line(InputStream in) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        int next = in.read();
        if (next < 0) {
            return null;
        }
        for (; next >= 0 && next != '\n'; next = in.read()) {
            line.write(next);
        }
        return line.toByteArray();
    }

    private void read(byte[] bytes) throws Broken, Unreadable {
        Map<String, Object> line = object(decode(bytes));
        String type = string(line, "type");
        if (ended) {
            throw new Broken(size + 1, "lines follow the export's end");
        }
        if ((project == null) != type.equals("project")) {
            throw new Unreadable("the first line, and no other, has to be the project");
        }
        switch (type) {
            case "project" -> project(line);
            case "content" -> content(line);
            case "revision" -> revision(line);
            case "end" -> end(line);
            default -> throw new Unreadable("there is no line of type " + type);
        }
    }

    private void project(Map<String, Object> line) throws Broken, Unreadable {
        only(line, "type", "format", "hash", "text");
        if (!string(line, "format").equals(FORMAT)) {
            throw new Unreadable("this verifies exports of format " + FORMAT);
        }
        project = object(string(line, "text"));
        only(project, "version", "organisation", "projectId", "name", "createdAt", "createdBy");
        head = sha256(string(line, "text"));
        if (!head.equals(string(line, "hash")) || !PROJECT.equals(project.get("version"))) {
            throw new Broken(1, "the project is not the one that the chain begins with");
        }
        checkHeld();
    }

    private void content(Map<String, Object> line) throws Broken, Unreadable {
        only(line, "type", "hash", "text");
        String hash = hash(line, "hash");
        String text = string(line, "text");
        if (sound.containsKey(hash) || !fresh.add(hash)) {
            throw new Broken(size + 1, "content " + hash + " is given twice");
        }
        if (!sha256(text).equals(hash)) {
            unsound.put(hash, "the text of content " + hash + " has another hash");
        } else if (new Json(text).read() instanceof Map<?, ?> content
                && content.get("verdict") instanceof String verdict) {
            sound.put(hash, verdict);
        } else {
            sound.put(hash, "");
        }
    }

    private void revision(Map<String, Object> line) throws Broken, Unreadable {
        only(line, "type", "hash", "verdict", "text");
        String hash = hash(line, "hash");
        String text = string(line, "text");
        String verdict = string(line, "verdict");
        if (!sha256(text).equals(hash)) {
            throw new Broken(size + 1, missingOr(text, "its hash is not that of its manifest"));
        }
        Map<String, Object> manifest = object(text);
        int number = number(manifest, "number");
        if (number > size + 1) {
            throw new Broken(size + 1, "the revision is missing");
        }
        if (number <= size) {
            throw new Broken(Math.max(number, 1), "the revision is there twice");
        }
        if (!MANIFEST.equals(manifest.get("version"))
                || !project.get("organisation").equals(manifest.get("organisation"))
                || !project.get("projectId").equals(manifest.get("projectId"))) {
            throw new Broken(number, "it belongs to another project or has another format");
        }
        if (!head.equals(manifest.get("previousHash"))) {
            throw new Broken(number, "its previousHash is not the hash of what comes before it");
        }
        List<String> named = named(manifest);
        for (String content : named) {
            if (unsound.containsKey(content)) {
                throw new Broken(number, unsound.get(content));
            }
            if (!sound.containsKey(content)) {
                throw new Broken(number, "content " + content + " is missing");
            }
        }
        fresh.removeAll(Set.copyOf(named));
        if (!fresh.isEmpty()) {
            throw new Broken(number, "content is given before it that it does not name: " + fresh);
        }
        if (!verdict.equals(sound.get(string(manifest, "resultShell")))) {
            throw new Broken(number, "its verdict is not the one in its results");
        }
        size = number;
        head = hash;
        recordedAt = string(manifest, "recordedAt");
        checkHeld();
    }

    /** What is wrong with a manifest that has not its hash, so far as it can be told. */
    private String missingOr(String text, String otherwise) throws Unreadable {
        Map<String, Object> manifest = object(text);
        return manifest.get("number") instanceof BigDecimal number
                        && number.compareTo(BigDecimal.valueOf(size + 1L)) > 0
                ? "the revision is missing, or has another number"
                : otherwise;
    }

    /** Every content that a manifest names. */
    private static List<String> named(Map<String, Object> manifest) throws Unreadable {
        List<String> named = new ArrayList<>();
        named.add(hash(manifest, "documentShell"));
        named.add(hash(manifest, "resultShell"));
        if (!(manifest.get("bays") instanceof List<?> bays)) {
            throw new Unreadable("a manifest has no list of bays");
        }
        for (Object element : bays) {
            Map<String, Object> bay = properties(element);
            only(bay, "id", "input", "result");
            named.add(hash(bay, "input"));
            named.add(hash(bay, "result"));
        }
        return named;
    }

    private void end(Map<String, Object> line) throws Broken, Unreadable {
        only(line, "type", "size", "headHash", "recordedAt");
        int said = number(line, "size");
        if (said > size) {
            throw new Broken(size + 1, "the revision is missing: the export ends at " + said);
        }
        if (said < size || !string(line, "headHash").equals(head)) {
            throw new Broken(Math.max(said, 1), "the export's end is not the end of its chain");
        }
        if (line.get("recordedAt") == null
                ? recordedAt != null
                : !line.get("recordedAt").equals(recordedAt)) {
            throw new Broken(
                    Math.max(said, 1), "the end's instant is not that of the last revision");
        }
        if (!fresh.isEmpty()) {
            throw new Broken(size + 1, "content is given that no revision names: " + fresh);
        }
        ended = true;
    }

    private void finish() throws Broken, Unreadable {
        if (project == null) {
            throw new Unreadable("the file is empty");
        }
        if (!ended) {
            throw new Broken(size + 1, "the export was cut off: its last line is missing");
        }
        if (heldSize > size) {
            throw new Broken(
                    size + 1,
                    "the revision is missing: the held checkpoint was taken at " + heldSize);
        }
        if (heldSize >= 0 && !held) {
            throw new Broken(
                    heldSize,
                    "the chain does not have the held checkpoint's head at this size: this revision"
                            + " or an earlier one was replaced");
        }
    }

    private void checkHeld() {
        held |= size == heldSize && head.equals(heldHash);
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(
                            MessageDigest.getInstance("SHA-256")
                                    .digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    private static String decode(byte[] utf8) throws Unreadable {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(utf8)).toString();
        } catch (CharacterCodingException e) {
            throw new Unreadable("the line is not UTF-8");
        }
    }

    private static Map<String, Object> object(String json) throws Unreadable {
        return properties(new Json(json).read());
    }

    private static Map<String, Object> properties(Object value) throws Unreadable {
        if (!(value instanceof Map<?, ?> object)) {
            throw new Unreadable("a JSON object is expected");
        }
        Map<String, Object> properties = new LinkedHashMap<>();
        object.forEach((name, property) -> properties.put((String) name, property));
        return properties;
    }

    private static void only(Map<String, Object> object, String... names) throws Unreadable {
        if (!object.keySet().equals(Set.of(names))) {
            throw new Unreadable(
                    "the properties "
                            + String.join(", ", names)
                            + " are expected, not "
                            + object.keySet());
        }
    }

    private static String string(Map<String, Object> object, String name) throws Unreadable {
        if (object.get(name) instanceof String text) {
            return text;
        }
        throw new Unreadable(name + " has to be a text");
    }

    private static String hash(Map<String, Object> object, String name) throws Unreadable {
        String hash = string(object, name);
        if (!hash.matches(HASH)) {
            throw new Unreadable(name + " has to be a hash of 64 lower-case hexadecimal digits");
        }
        return hash;
    }

    private static int number(Map<String, Object> object, String name) throws Unreadable {
        try {
            if (object.get(name) instanceof BigDecimal number) {
                return number.intValueExact();
            }
        } catch (ArithmeticException tooLarge) {
            // said below
        }
        throw new Unreadable(name + " has to be a whole number");
    }

    /** Reads JSON (RFC 8259) without any leniency; a property that is given twice is refused. */
    private static final class Json {

        private static final int MAX_DEPTH = 64;
        private static final java.util.regex.Pattern NUMBER =
                java.util.regex.Pattern.compile(
                        "-?(0|[1-9][0-9]{0,400})(\\.[0-9]{1,400})?([eE][+-]?[0-9]{1,4})?");

        private final String text;
        private int at;
        private int depth;

        Json(String text) {
            this.text = text;
        }

        Object read() throws Unreadable {
            Object value = value();
            blanks();
            if (at < text.length()) {
                throw wrong("there is more than one value");
            }
            return value;
        }

        private Unreadable wrong(String what) {
            return new Unreadable("not valid JSON at character " + (at + 1) + ": " + what);
        }

        private void blanks() {
            while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
        }

        /** The next character that is no blank, not taken; 0 at the end. */
        private char ahead() {
            blanks();
            return at < text.length() ? text.charAt(at) : 0;
        }

        private void take(char wanted) throws Unreadable {
            if (ahead() != wanted) {
                throw wrong("'" + wanted + "' is expected");
            }
            at++;
        }

        private boolean taken(char wanted) {
            boolean there = ahead() == wanted;
            at += there ? 1 : 0;
            return there;
        }

        private Object value() throws Unreadable {
            if (++depth > MAX_DEPTH) {
                throw wrong("it is nested too deep");
            }
            Object value =
                    switch (ahead()) {
                        case '{' -> objectValue();
                        case '[' -> arrayValue();
                        case '"' -> stringValue();
                        case 't' -> literal("true", true);
                        case 'f' -> literal("false", false);
                        case 'n' -> literal("null", null);
                        default -> numberValue();
                    };
            depth--;
            return value;
        }

        private Map<String, Object> objectValue() throws Unreadable {
            Map<String, Object> properties = new LinkedHashMap<>();
            take('{');
            if (taken('}')) {
                return properties;
            }
            do {
                blanks();
                String name = stringValue();
                take(':');
                if (properties.containsKey(name)) {
                    throw wrong("the property " + name + " is given twice");
                }
                properties.put(name, value());
            } while (taken(','));
            take('}');
            return properties;
        }

        private List<Object> arrayValue() throws Unreadable {
            List<Object> elements = new ArrayList<>();
            take('[');
            if (taken(']')) {
                return elements;
            }
            do {
                elements.add(value());
            } while (taken(','));
            take(']');
            return elements;
        }

        private Object literal(String word, Object value) throws Unreadable {
            if (!text.startsWith(word, at)) {
                throw wrong("a value is expected");
            }
            at += word.length();
            return value;
        }

        private BigDecimal numberValue() throws Unreadable {
            java.util.regex.Matcher number = NUMBER.matcher(text).region(at, text.length());
            if (!number.lookingAt()) {
                throw wrong("a value is expected");
            }
            at = number.end();
            return new BigDecimal(number.group());
        }

        private String stringValue() throws Unreadable {
            StringBuilder string = new StringBuilder();
            take('"');
            while (at < text.length() && text.charAt(at) != '"') {
                char c = text.charAt(at++);
                if (c < ' ') {
                    throw wrong("a control character stands in a text");
                }
                string.append(c == '\\' ? escaped() : c);
            }
            take('"');
            requireWholeCharacters(string);
            return string.toString();
        }

        private char escaped() throws Unreadable {
            char c = at < text.length() ? text.charAt(at++) : 0;
            int simple = "\"\\/bfnrt".indexOf(c);
            if (simple >= 0) {
                return "\"\\/\b\f\n\r\t".charAt(simple);
            }
            if (c != 'u'
                    || !text.substring(at, Math.min(at + 4, text.length()))
                            .matches("[0-9a-fA-F]{4}")) {
                throw wrong("an escape is not one of JSON's");
            }
            at += 4;
            return (char) Integer.parseInt(text.substring(at - 4, at), 16);
        }

        /** Half of a surrogate pair is no character and has no UTF-8. */
        private void requireWholeCharacters(CharSequence string) throws Unreadable {
            boolean halves = string.codePoints().anyMatch(c -> c >= 0xD800 && c <= 0xDFFF);
            if (halves) {
                throw wrong("half of a surrogate pair stands in a text");
            }
        }
    }
}
