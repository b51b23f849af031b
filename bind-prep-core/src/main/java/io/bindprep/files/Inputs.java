package io.bindprep.files;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Files that a run reads and so never writes over: the PDF, its job, password, tables and punch. A file is the same by
 * whatever name, symbolic link or hard link it is reached. Does not change; safe for several threads.
 */
public final class Inputs {
    /** Nothing was read. */
    public static final Inputs NONE = new Inputs(List.of());

    /** Fewer than this are compared one by one; a folder of thousands would be too many for each of its reports. */
    private static final int FEW = 16;

    /** One file, and what it is to the run, such as "the job file". */
    private record Input(String what, Path file) {}

    private final List<Input> inputs;
    private @Nullable Map<Object, List<Input>> byIdentity;

    private Inputs(List<Input> inputs) {
        this.inputs = inputs;
    }

    /**
     * These and one more.
     *
     * @param what it is to the run, with its article, such as "the job file"
     */
    public Inputs plus(String what, Path file) {
        return plus(new Inputs(List.of(new Input(what, file))));
    }

    /** These and others. */
    public Inputs plus(Inputs others) {
        if (inputs.isEmpty() || others.inputs.isEmpty()) {
            return inputs.isEmpty() ? others : this;
        }
        Set<Input> all = new LinkedHashSet<>(inputs);
        all.addAll(others.inputs);
        return new Inputs(List.copyOf(all));
    }

    /** All PDFs of a run, which may be thousands. */
    public static Inputs pdfs(List<Path> files) {
        return new Inputs(files.stream().map(file -> new Input("the PDF", file)).toList());
    }

    /** These without those of one kind, which the run may write over. */
    public Inputs without(String what) {
        return new Inputs(
                inputs.stream().filter(input -> !input.what.equals(what)).toList());
    }

    /** Returns true if a file is one of these. */
    public boolean has(Path file) {
        return same(file).isPresent();
    }

    /**
     * Fails where a file is one of these.
     *
     * @throws FileSystemException with the file and the input that it is
     */
    void refuse(Path target) throws FileSystemException {
        Input input = same(target).orElse(null);
        if (input != null) {
            String name = input.file.equals(target) ? "" : ", " + input.file;
            throw new FileSystemException(
                    target.toString(),
                    null,
                    "this is an input (" + input.what + name + "), which is never overwritten; name another file");
        }
    }

    private Optional<Input> same(Path file) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        List<Input> near = inputs.size() < FEW ? inputs : near(file);
        return near.stream().filter(input -> same(input.file, file)).findFirst();
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException e) {
            return false;
        }
    }

    private List<Input> near(Path file) {
        Map<Object, List<Input>> known = byIdentity();
        List<Input> near = new ArrayList<>();
        identities(file).forEach(identity -> near.addAll(known.getOrDefault(identity, List.of())));
        return near;
    }

    private synchronized Map<Object, List<Input>> byIdentity() {
        if (byIdentity == null) {
            byIdentity = new HashMap<>();
            for (Input input : inputs) {
                for (Object identity : identities(input.file)) {
                    byIdentity.computeIfAbsent(identity, k -> new ArrayList<>()).add(input);
                }
            }
        }
        return byIdentity;
    }

    /** The path tells a file that was replaced meanwhile, the key one by a hard link; not every system has keys. */
    private static List<Object> identities(Path file) {
        try {
            Object key = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
            return List.of(file.toRealPath(), key == null ? "no key" : key);
        } catch (IOException e) {
            return List.of();
        }
    }
}
