package io.bindprep.pdf.jpx;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Markers of a header that say how tiles are coded; a tile's begin as a copy of the picture's. */
final class Settings {
    private static final int COD = 0xff52;
    private static final int COC = 0xff53;
    private static final int RGN = 0xff5e;
    private static final int QCD = 0xff5c;
    private static final int QCC = 0xff5d;
    private static final int POC = 0xff5f;

    private final int components;
    private final @Nullable Coding[] coding;
    private final @Nullable Quantising[] quantising;
    private final boolean[] ownCoding;
    private final boolean[] ownQuantising;
    private final int[] raised;
    private List<Progression> changes = new ArrayList<>();
    private int order;
    private int layers;
    private boolean mixed;

    /**
     * Packets in one order.
     *
     * @param order 0 to 4, as the standard numbers them
     */
    record Progression(int order, int resolution, int component, int layers, int resolutionEnd, int componentEnd) {}

    Settings(int components) {
        this.components = components;
        coding = new @Nullable Coding[components];
        quantising = new @Nullable Quantising[components];
        ownCoding = new boolean[components];
        ownQuantising = new boolean[components];
        raised = new int[components];
    }

    Settings(Settings main) {
        this(main.components);
        System.arraycopy(main.coding, 0, coding, 0, components);
        System.arraycopy(main.quantising, 0, quantising, 0, components);
        System.arraycopy(main.raised, 0, raised, 0, components);
        changes = main.changes;
        order = main.order;
        layers = main.layers;
        mixed = main.mixed;
    }

    Coding coding(int component) throws IOException {
        Coding c = coding[component];
        if (c == null) {
            throw new IOException("its coding is missing");
        }
        return c;
    }

    Quantising quantising(int component) throws IOException {
        Quantising q = quantising[component];
        if (q == null) {
            throw new IOException("its quantisation is missing");
        }
        return q;
    }

    /** Bits by which a region of interest is raised. */
    int raised(int component) {
        return raised[component];
    }

    int layers() {
        return layers;
    }

    /** Returns true if the first three components are mixed. */
    boolean mixed() {
        return mixed;
    }

    List<Progression> progressions() {
        return changes.isEmpty()
                ? List.of(new Progression(order, 0, 0, layers, Integer.MAX_VALUE, components))
                : changes;
    }

    /** Takes in a marker's content; those that say nothing of coding are passed over. */
    void take(int marker, ByteReader in) throws IOException {
        switch (marker) {
            case COD -> {
                int style = in.u8();
                order = in.u8();
                layers = in.u16();
                mixed = in.u8() != 0;
                Coding all = Coding.read(in, (style & 1) != 0);
                for (int c = 0; c < components; c++) {
                    coding[c] = ownCoding[c] ? coding[c] : all;
                }
            }
            case COC -> {
                int c = component(in);
                coding[c] = Coding.read(in, (in.u8() & 1) != 0);
                ownCoding[c] = true;
            }
            case QCD -> {
                Quantising all = Quantising.read(in);
                for (int c = 0; c < components; c++) {
                    quantising[c] = ownQuantising[c] ? quantising[c] : all;
                }
            }
            case QCC -> {
                int c = component(in);
                quantising[c] = Quantising.read(in);
                ownQuantising[c] = true;
            }
            case RGN -> {
                int c = component(in);
                if (in.u8() != 0) {
                    throw new IOException("its region of interest is of no known kind");
                }
                raised[c] = in.u8();
            }
            case POC -> changes(in);
            default -> {} // of no use here
        }
    }

    private void changes(ByteReader in) throws IOException {
        List<Progression> read = new ArrayList<>();
        while (in.left() >= (components < 257 ? 7 : 9)) {
            int resolution = in.u8();
            int component = index(in);
            int layerEnd = Math.min(in.u16(), layers);
            int resolutionEnd = in.u8();
            int componentEnd = index(in);
            int ofOrder = in.u8();
            // 0 stands for 256, as one byte cannot hold it
            int end = componentEnd == 0 ? components : Math.min(componentEnd, components);
            read.add(new Progression(ofOrder, resolution, component, layerEnd, resolutionEnd, end));
        }
        changes = read;
    }

    private int index(ByteReader in) throws IOException {
        return components < 257 ? in.u8() : in.u16();
    }

    private int component(ByteReader in) throws IOException {
        int c = index(in);
        if (c >= components) {
            throw new IOException("it names a component that it does not have");
        }
        return c;
    }
}
