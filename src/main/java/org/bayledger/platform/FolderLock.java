package org.bayledger.platform;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Holds a folder for one service alone; the operating system lets go of it when the JVM dies. */
final class FolderLock implements AutoCloseable {

    /**
     * Folders this JVM holds. A lock file must not even be opened twice in one process: closing the
     * second opening would let go of the first one's lock (POSIX).
     */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path folder;
    private final FileChannel channel;

    private FolderLock(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    /** Takes the folder, or refuses to start where another service holds it. */
    static FolderLock take(Path folder) throws IOException {
        if (!HELD.add(folder)) {
            throw refused(folder);
        }
        FolderLock lock = null;
        try {
            lock = lock(folder);
        } finally {
            if (lock == null) {
                HELD.remove(folder);
            }
        }
        return lock;
    }

    private static FolderLock lock(Path folder) throws IOException {
        FileChannel channel =
                FileChannel.open(
                        folder.resolve("lock"),
                        StandardOpenOption.CREATE,
                        StandardOpenOption.WRITE);
        if (channel.tryLock() == null) {
            channel.close();
            throw refused(folder);
        }
        return new FolderLock(folder, channel);
    }

    private static StartupRefusedException refused(Path folder) {
        return new StartupRefusedException(
                "Another service is running on the embedded database in " + folder + ".",
                "Stop that service, or give this one a folder of its own with"
                        + " bayledger.embedded-database.directory, or a PostgreSQL server with"
                        + " SPRING_DATASOURCE_URL.");
    }

    @Override
    public void close() throws IOException {
        channel.close();
        HELD.remove(folder);
    }
}
