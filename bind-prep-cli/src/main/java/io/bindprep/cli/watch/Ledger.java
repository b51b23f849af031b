package io.bindprep.cli.watch;

import io.bindprep.files.Inputs;
import io.bindprep.files.WholeFile;
import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Record of the files checked, kept in a file so that a watch that starts again goes on where it ended: one line a file,
 * appended in one write once its reports are there. A line that was cut off by a power failure counts for nothing, so its
 * file is checked once more. Lines that later ones have overtaken go when a watch starts.
 */
final class Ledger implements Closeable {
    /** Its name in the folder of the reports; hidden, so that it is never taken for an input. */
    static final String NAME = ".bind-prep-ledger";

    /** Stands for the digest of a file that could not be read. */
    static final String UNCHECKED = "-";

    // 19 digits hold the nanoseconds of this century
    private static final Pattern LINE =
            Pattern.compile("2\t([0-9a-f]{64})\t([0-9a-f]{64}|-)\t(\\d{1,18})\t(-?\\d{1,19})\t(-?\\d{1,19})\t([^\t]+)");

    /**
     * One file that was checked.
     *
     * @param settings digest of everything but the file that the answer hangs on
     * @param sha256 of the file; {@link #UNCHECKED} where it could not be read
     */
    record Entry(String settings, String sha256, FileStamp stamp) {}

    private final Path file;
    private final Map<String, Entry> last = new TreeMap<>();
    private FileChannel channel;
    // of the file whose place a shorter one took: whoever opened that before still finds it locked
    private @Nullable FileChannel replaced;

    private Ledger(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Opens the ledger of a folder, or begins one.
     *
     * @param inputs files that are not written over
     * @throws IOException where it cannot be kept, or another process keeps it now
     */
    static Ledger open(Path folder, Inputs inputs) throws IOException {
        Path file = folder.resolve(NAME);
        WholeFile.check(file, inputs);
        Ledger ledger = new Ledger(file, locked(file, StandardOpenOption.CREATE));
        try {
            ledger.read();
            return ledger;
        } catch (IOException e) {
            ledger.close();
            throw e;
        }
    }

    private static FileChannel locked(Path file, StandardOpenOption... more) throws IOException {
        Set<OpenOption> how = new HashSet<>(List.of(more));
        how.addAll(List.of(StandardOpenOption.READ, StandardOpenOption.WRITE));
        FileChannel channel = FileChannel.open(file, how);
        try {
            lock(channel, file);
            return channel;
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    private static void lock(FileChannel channel, Path file) throws IOException {
        boolean ours;
        try {
            ours = channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            ours = false;
        } catch (IOException e) {
            return; // a share without locks: its user must see to it alone
        }
        if (!ours) {
            throw new FileSystemException(file.toString(), null, "another bind-prep watches with these reports");
        }
    }

    private void read() throws IOException {
        // not closed: that would close the channel, and with it give up the lock
        BufferedReader reader =
                new BufferedReader(new InputStreamReader(Channels.newInputStream(channel), StandardCharsets.UTF_8));
        int lines = 0;
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            lines++;
            Matcher m = LINE.matcher(line);
            if (m.matches()) {
                keep(m);
            }
        }
        if (lines > last.size()) {
            compact();
        }
        long size = channel.size();
        if (size > 0) {
            ByteBuffer end = ByteBuffer.allocate(1);
            channel.read(end, size - 1);
            if (end.get(0) != '\n') {
                append("\n"); // so that the next line is whole
            }
        }
    }

    private void compact() throws IOException {
        StringBuilder text = new StringBuilder();
        last.forEach((name, entry) -> text.append(line(name, entry)));
        try {
            WholeFile.write(file, text.toString(), Inputs.NONE);
        } catch (IOException e) {
            return; // longer than it need be, and as true
        }
        FileChannel shorter = locked(file);
        replaced = channel;
        channel = shorter;
        channel.force(true);
    }

    private void keep(Matcher m) {
        try {
            FileStamp stamp =
                    new FileStamp(Long.parseLong(m.group(3)), Long.parseLong(m.group(4)), Long.parseLong(m.group(5)));
            last.put(unescaped(m.group(6)), new Entry(m.group(1), m.group(2), stamp));
        } catch (NumberFormatException e) {
            return; // not written by us: its file is checked once more
        }
    }

    /** The last check of a file by its name; empty where there was none. */
    Optional<Entry> last(String name) {
        return Optional.ofNullable(last.get(name));
    }

    /** Keeps that a file was checked; when this returns it is on the disk. */
    void add(String name, Entry entry) throws IOException {
        append(line(name, entry));
        last.put(name, entry);
    }

    private static String line(String name, Entry entry) {
        FileStamp stamp = entry.stamp();
        return "2\t" + entry.settings() + "\t" + entry.sha256() + "\t" + stamp.size() + "\t" + stamp.modifiedNanos()
                + "\t" + stamp.changedNanos() + "\t" + escaped(name) + "\n";
    }

    private void append(String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        channel.position(channel.size());
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        channel.force(false);
    }

    private static String escaped(String name) {
        return name.replace("\\", "\\\\")
                .replace("\t", "\\t")
                .replace("\n", "\\n")
                .replace("\r", "\\r");
    }

    private static String unescaped(String text) {
        return Pattern.compile("\\\\(.)")
                .matcher(text)
                .replaceAll(m -> Matcher.quoteReplacement(
                        switch (m.group(1)) {
                            case "t" -> "\t";
                            case "n" -> "\n";
                            case "r" -> "\r";
                            default -> m.group(1);
                        }));
    }

    @Override
    public void close() throws IOException {
        try (FileChannel first = replaced) {
            channel.close();
        }
    }
}
