package io.bindprep.maven;

import java.util.ServiceLoader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;

/**
 * The picture formats of this plugin's own libraries. The JDK looks for readers once, through the class loader of whoever
 * asks first: where that was another plugin of the build, ours would be unknown and pages with such pictures not checked.
 */
final class PluginReaders {
    private PluginReaders() {}

    /** Makes those known that are not; one at a time, as builds run goals side by side. */
    static synchronized void register() {
        IIORegistry registry = IIORegistry.getDefaultInstance();
        for (ImageReaderSpi reader : ServiceLoader.load(ImageReaderSpi.class, PluginReaders.class.getClassLoader())) {
            if (registry.getServiceProviderByClass(reader.getClass()) == null) {
                registry.registerServiceProvider(reader, ImageReaderSpi.class);
            }
        }
    }
}
