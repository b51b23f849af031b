package io.bindprep.cli.input;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.TreeSet;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** The folder of jars whose ImageIO readers decode pictures; code is loaded from nowhere else. */
public final class ImageReaders {
    public static final String OPTION = "--image-readers";
    public static final String LABEL = "DIR";
    public static final String MEANING =
            "folder with jars of ImageIO readers, for pictures (JPEG 2000) that are not decoded without; their code"
                    + " runs within the check";

    private static final List<String> OF_PDF = List.of("JPEG2000", "JBIG2");

    private final CommandSpec command;
    private final Path folder;

    private ImageReaders(CommandSpec command, Path folder) {
        this.command = command;
        this.folder = folder;
    }

    /** Makes the readers known to ImageIO, before all others; does nothing where no folder is named. */
    public static void register(CommandSpec command, @Nullable Path folder) {
        if (folder != null) {
            new ImageReaders(command, folder).register();
        }
    }

    private void register() {
        try {
            List<URL> jars = jars(folder);
            if (jars.isEmpty()) {
                throw wrong("no jar is in it", null);
            }
            // apart from the command's own libraries, which a reader's may clash with
            ClassLoader loader = new URLClassLoader(jars.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
            register(ServiceLoader.load(ImageReaderSpi.class, loader), loader);
        } catch (IOException | UncheckedIOException e) {
            throw wrong(Files.isDirectory(folder) ? "it cannot be read" : "there is no such folder", e);
        } catch (ServiceConfigurationError | LinkageError e) {
            throw wrong("a reader in it does not start: " + e.getMessage(), e);
        }
    }

    private void register(ServiceLoader<ImageReaderSpi> services, ClassLoader loader) {
        IIORegistry registry = IIORegistry.getDefaultInstance();
        TreeSet<String> formats = new TreeSet<>();
        for (ImageReaderSpi reader : services) {
            // the platform's own are met too
            if (reader.getClass().getClassLoader() != loader) {
                continue;
            }
            Collections.addAll(formats, reader.getFormatNames());
            registry.registerServiceProvider(reader, ImageReaderSpi.class);
            Iterator<ImageReaderSpi> others = registry.getServiceProviders(ImageReaderSpi.class, false);
            while (others.hasNext()) {
                ImageReaderSpi other = others.next();
                if (other != reader) {
                    registry.setOrdering(ImageReaderSpi.class, reader, other);
                }
            }
        }
        if (Collections.disjoint(formats, OF_PDF)) {
            String what = formats.isEmpty() ? "no ImageIO reader is in its jars" : "its readers know only " + formats;
            throw wrong(what + "; a PDF asks for " + String.join(" or ", OF_PDF), null);
        }
    }

    private static List<URL> jars(Path folder) throws IOException {
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder, "*.jar")) {
            stream.forEach(found::add);
        }
        Collections.sort(found);
        List<URL> urls = new ArrayList<>();
        for (Path jar : found) {
            urls.add(jar.toUri().toURL());
        }
        return urls;
    }

    private ParameterException wrong(String what, @Nullable Throwable cause) {
        return new ParameterException(command.commandLine(), OPTION + " " + folder + ": " + what, cause);
    }
}
