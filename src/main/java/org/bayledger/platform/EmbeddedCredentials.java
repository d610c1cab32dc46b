package org.bayledger.platform;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Properties;

/**
 * The generated passwords of the embedded database, kept in a file that only its owner can read.
 */
record EmbeddedCredentials(String superuserPassword, String ownerPassword, String servicePassword) {

    private static final int PASSWORD_BYTES = 24;

    /** Reads the passwords of an existing database. */
    static EmbeddedCredentials read(Path file) throws IOException {
        Properties stored = new Properties();
        try (var reader = Files.newBufferedReader(file)) {
            stored.load(reader);
        }
        return new EmbeddedCredentials(
                required(stored, "superuser", file),
                required(stored, "owner", file),
                required(stored, "service", file));
    }

    /** Makes new passwords and keeps them; the file is complete or absent, never half. */
    static EmbeddedCredentials create(Path file) throws IOException {
        EmbeddedCredentials made =
                new EmbeddedCredentials(newPassword(), newPassword(), newPassword());
        Properties stored = new Properties();
        stored.setProperty("superuser", made.superuserPassword);
        stored.setProperty("owner", made.ownerPassword);
        stored.setProperty("service", made.servicePassword);
        StringWriter text = new StringWriter();
        stored.store(text, "Passwords of the embedded database in this folder");
        Path partial = file.resolveSibling(file.getFileName() + ".partial");
        writePrivately(partial, text.toString());
        Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE);
        return made;
    }

    /** Writes a file that only its owner can read, from the first byte on. */
    static void writePrivately(Path file, String text) throws IOException {
        Files.deleteIfExists(file);
        Files.createFile(file, ownerOnly(file, "rw-------"));
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    /**
     * The attribute that gives a new file or folder to its owner alone, where POSIX rights exist.
     */
    static FileAttribute<?>[] ownerOnly(Path path, String rights) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
                }
                : new FileAttribute<?>[0];
    }

    /** Closes a folder to everybody else, also one that was there before; it holds programs. */
    static void keepToOwner(Path folder) throws IOException {
        PosixFileAttributeView posix =
                Files.getFileAttributeView(folder, PosixFileAttributeView.class);
        if (posix != null) {
            posix.setPermissions(PosixFilePermissions.fromString("rwx------"));
        }
    }

    private static String newPassword() {
        byte[] bytes = new byte[PASSWORD_BYTES];
        new SecureRandom().nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static String required(Properties stored, String name, Path file) {
        String value = stored.getProperty(name);
        if (value == null || value.isBlank()) {
            throw new StartupRefusedException(
                    "The file " + file + " does not hold the password of '" + name + "'.",
                    "Restore the file from the same backup as the database beside it.");
        }
        return value;
    }

    /** Never the passwords themselves, whatever logs it. */
    @Override
    public String toString() {
        return "EmbeddedCredentials[hidden]";
    }
}
