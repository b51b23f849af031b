package io.bindprep.pdf;

import static io.bindprep.pdf.PageMaker.numbers;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Small pages, each with one thing in the 15 mm along its left edge, to ask other renderers about. */
public final class StripCases {
    private static final String FRAME = "0 g 1 w ";
    private static final String INK = "0 g 6 100 6 10 re f ";

    private final Map<String, Supplier<PageMaker>> cases = new LinkedHashMap<>();

    private StripCases() {}

    public static Map<String, Supplier<PageMaker>> all() {
        StripCases all = new StripCases();
        all.outlines();
        all.text();
        all.annotations();
        all.formsAndLayers();
        all.inks();
        all.pictures();
        all.pages();
        return all.cases;
    }

    private void add(String name, String operators, UnaryOperator<PageMaker> more) {
        cases.put(name, () -> more.apply(PageMaker.a4()).draw(operators));
    }

    private void add(String name, String operators) {
        add(name, operators, m -> m);
    }

    private static COSName name(String name) {
        return COSName.getPDFName(name);
    }

    private static COSDictionary dictionary(Object... pairs) {
        COSDictionary d = new COSDictionary();
        for (int i = 0; i < pairs.length; i += 2) {
            d.setItem(name((String) pairs[i]), (COSBase) pairs[i + 1]);
        }
        return d;
    }

    private static COSStream with(COSStream stream, Object... pairs) {
        stream.addAll(dictionary(pairs));
        return stream;
    }

    private void outlines() {
        // the curve comes to 4.5 mm, its control points to 2 mm
        add("a filled curve", "0 g 12 100 m 2 105 2 115 12 120 c f");
        add("a stroked curve", FRAME + "12 100 m 2 105 2 115 12 120 c S");
        add("a curve from the current point", "0 g 12 100 m 2 115 12 120 v f");
        add("a curve to its control point", "0 g 12 100 m 2 105 12 120 y f");
        add("even-odd ring", "0 g 3 100 10 10 re 5 102 6 6 re f*");
        for (int cap = 0; cap < 3; cap++) {
            add("cap " + cap, "0 g 2 w " + cap + " J 7 100 m 12 104 l S");
            add("a dot with cap " + cap, "0 g 3 w " + cap + " J 7 100 m 7 100 l S");
        }
        for (int join = 0; join < 3; join++) {
            add("join " + join, FRAME + join + " j 14 100 m 7 103 l 14 106 l S");
        }
        add("a mitre cut off", FRAME + "1.5 M 14 100 m 7 103 l 14 106 l S");
        add("a long mitre", FRAME + "20 M 14 101.5 m 7 103 l 14 104.5 l S");
        add("dashes", FRAME + "[3 2] 0 d 4 100 m 14 100 l S");
        add("dashes that begin with a gap", FRAME + "[3 2] 3 d 4 100 m 14 100 l S");
        add("dashes with round caps", FRAME + "1 J [0 3] 0 d 5 100 m 14 100 l S");
        add("a line without width", "0 g 0 w 7 100 m 7 120 l S");
        add("a line as broad as it is scaled", "q 3 0 0 1 0 0 cm 0 g 1 w 3 100 m 3 120 l S Q");
        add("a slanted pen", "q 3 0 1 1 -100 0 cm 0 g 1 w 3 100 m 3 110 l S Q");
        add("a closed frame", FRAME + "5 100 6 10 re S");
        add("filled and stroked", FRAME + "5 100 6 10 re B");
        add("a flat fill", "0 g 6 100 m 12 100 l f");
        add("clipped by a rectangle", "q 8 90 30 30 re W n 0 g 2 100 10 10 re f Q");
        add("clipped by a triangle", "q 4 100 m 14 100 l 14 120 l h W n 0 g 2 110 20 4 re f Q");
        add("clipped by a ring", "q 2 95 20 20 re 6 95 20 20 re W* n 0 g 0 100 20 4 re f Q");
        add("clipped away", "q 20 90 30 30 re W n 0 g 2 100 10 10 re f Q");
        add("a page turned on its side by its matrix", "q 0 1 -1 0 120 0 cm 0 g 100 108 10 6 re f Q");
    }

    private static UnaryOperator<PageMaker> helvetica() {
        return m -> m.resource(
                COSName.FONT,
                "F",
                dictionary("Type", COSName.FONT, "Subtype", COSName.TYPE1, "BaseFont", name("Helvetica")));
    }

    private static UnaryOperator<PageMaker> embedded(boolean upright) {
        return m -> {
            try (InputStream ttf = PDType0Font.class.getResourceAsStream(
                    "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
                return m.font(
                        "F",
                        document -> upright
                                ? PDType0Font.loadVertical(document, ttf, false)
                                : PDType0Font.load(document, ttf, false));
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        };
    }

    private void text() {
        UnaryOperator<PageMaker> font = helvetica();
        add("text", "0 g BT /F 5 Tf 6 100 Td (Hp) Tj ET", font);
        add("text at 90 degrees", "0 g BT /F 5 Tf 0 1 -1 0 11 100 Tm (Hamburg) Tj ET", font);
        add("text at 30 degrees", "0 g BT /F 5 Tf .866 .5 -.5 .866 7 100 Tm <002B0053> Tj ET", embedded(false));
        add("slanted text", "0 g BT /F 5 Tf 1 0 .5 1 4 100 Tm <002B0053> Tj ET", embedded(false));
        add("narrow text", "0 g BT /F 5 Tf 50 Tz 6 100 Td (HH) Tj ET", font);
        add("raised text", "0 g BT /F 5 Tf 4 Ts 6 100 Td (H) Tj ET", font);
        add("spaced text", "0 g BT /F 2 Tf 3 Tc 2 Tw 3 100 Td (i i) Tj ET", font);
        add("kerned text", "0 g BT /F 2 Tf 12 100 Td [(l) 4000 (l)] TJ ET", font);
        add("stroked text", "0 g .5 w BT /F 8 Tf 1 Tr 5 100 Td (I) Tj ET", font);
        add("invisible text", "0 g BT /F 5 Tf 3 Tr 6 100 Td (Hp) Tj ET", font);
        add("next lines", "0 g BT /F 2 Tf 5 TL 12 100 Td (l) ' -6 -2 TD (l) Tj T* (l) Tj ET", font);
        add("text in a composite font", "0 g BT /F 5 Tf 6 100 Td <002B0053> Tj ET", embedded(false));
        add("text from top to bottom", "0 g BT /F 5 Tf 9 110 Td <002B0053> Tj ET", embedded(true));
        add("a drawn character", "0 g BT /T 10 Tf 5 100 Td (A) Tj ET", m -> {
            COSDictionary glyphs = dictionary("bar", m.stream("1000 0 0 0 750 750 d1 100 0 300 750 re f"));
            return m.resource(
                    COSName.FONT,
                    "T",
                    dictionary(
                            "Type",
                            COSName.FONT,
                            "Subtype",
                            COSName.TYPE3,
                            "FontBBox",
                            numbers(0, 0, 750, 750),
                            "FontMatrix",
                            numbers(.001, 0, 0, .001, 0, 0),
                            "CharProcs",
                            glyphs,
                            "Encoding",
                            dictionary(
                                    "Type",
                                    name("Encoding"),
                                    "Differences",
                                    new COSArray(List.of(COSInteger.get(65), name("bar")))),
                            "FirstChar",
                            COSInteger.get(65),
                            "LastChar",
                            COSInteger.get(65),
                            "Widths",
                            numbers(1000),
                            "Resources",
                            new COSDictionary()));
        });
    }

    private static UnaryOperator<PageMaker> annotated(String subtype, int flags, COSBase state) {
        return m -> {
            COSStream look = with(m.stream("0 0 10 10 re f"), "Subtype", COSName.FORM, "BBox", numbers(0, 0, 10, 10));
            COSDictionary normal = state == null
                    ? dictionary("N", look)
                    : dictionary(
                            "N",
                            dictionary(
                                    "On",
                                    look,
                                    "Off",
                                    with(m.stream(""), "Subtype", COSName.FORM, "BBox", numbers(0, 0, 10, 10))));
            COSDictionary note = dictionary(
                    "Type",
                    COSName.ANNOT,
                    "Subtype",
                    name(subtype),
                    "Rect",
                    numbers(20, 300, 34, 330),
                    "F",
                    COSInteger.get(flags),
                    "AP",
                    normal);
            if (state != null) {
                note.setItem(COSName.AS, state);
                note.setItem(COSName.FT, COSName.BTN);
                note.setItem(COSName.T, new COSString("box"));
                m.withCatalog(c -> c.setItem(COSName.ACRO_FORM, dictionary("Fields", new COSArray(List.of(note)))));
            }
            return m.with(p -> p.setItem(COSName.ANNOTS, new COSArray(List.of(note))));
        };
    }

    private void annotations() {
        // ISO 32000-1:2008, Table 165: 2 Hidden, 4 Print, 32 NoView
        add("an annotation that prints", "", annotated("Stamp", 4, null));
        add("an annotation that does not print", "", annotated("Stamp", 0, null));
        add("a hidden annotation", "", annotated("Stamp", 6, null));
        add("an annotation to print only", "", annotated("Stamp", 36, null));
        add("a ticked box", "", annotated("Widget", 4, name("On")));
        add("a box not ticked", "", annotated("Widget", 4, name("Off")));
    }

    private static COSStream form(PageMaker m, String operators, double... matrix) {
        return with(
                m.stream(operators),
                "Type",
                name("XObject"),
                "Subtype",
                COSName.FORM,
                "BBox",
                numbers(0, 0, 10, 10),
                "Matrix",
                numbers(matrix),
                "Resources",
                new COSDictionary());
    }

    private static UnaryOperator<PageMaker> layered(String setting, String policy, int on) {
        return m -> {
            COSDictionary shown = dictionary("Type", COSName.OCG, "Name", new COSString("shown"));
            COSDictionary hidden = dictionary("Type", COSName.OCG, "Name", new COSString("hidden"));
            COSDictionary config = dictionary("Name", new COSString("plain"), "OFF", new COSArray(List.of(hidden)));
            if (setting.equals("print")) {
                config = dictionary(
                        "AS",
                        new COSArray(List.of(dictionary(
                                "Event",
                                name("Print"),
                                "Category",
                                new COSArray(List.of(name("Print"))),
                                "OCGs",
                                new COSArray(List.of(hidden))))));
                hidden.setItem("Usage", dictionary("Print", dictionary("PrintState", name("OFF"))));
            }
            COSDictionary properties = dictionary("D", config, "OCGs", new COSArray(List.of(shown, hidden)));
            COSDictionary member = policy.isEmpty()
                    ? on == 1 ? shown : hidden
                    : dictionary("Type", name("OCMD"), "OCGs", new COSArray(List.of(shown, hidden)), "P", name(policy));
            return m.withCatalog(c -> c.setItem(COSName.OCPROPERTIES, properties))
                    .resource(COSName.PROPERTIES, "L", member);
        };
    }

    private void formsAndLayers() {
        UnaryOperator<PageMaker> plain =
                m -> m.resource(COSName.XOBJECT, "Fm", form(m, "0 g -5 2 30 4 re f", 1, 0, 0, 1, 0, 0));
        add("a form cut to its box", "q 1 0 0 1 4 100 cm /Fm Do Q", plain);
        add(
                "a form turned by its matrix",
                "q 1 0 0 1 12 100 cm /Fm Do Q",
                m -> m.resource(COSName.XOBJECT, "Fm", form(m, "0 g 2 2 4 5 re f", 0, 1, -1, 0, 0, 0)));
        String marked = "/OC /L BDC " + INK + "EMC";
        add("a layer that is on", marked, layered("view", "", 1));
        add("a layer that is off", marked, layered("view", "", 0));
        add("a layer whose print state is off", marked, layered("print", "", 0));
        for (String policy : List.of("AllOn", "AnyOn", "AnyOff", "AllOff")) {
            add("layers " + policy, marked, layered("view", policy, 0));
        }
    }

    private static COSDictionary tint(double... toFull) {
        return dictionary(
                "FunctionType",
                COSInteger.get(2),
                "Domain",
                numbers(0, 1),
                "C0",
                numbers(0, 0, 0, 0),
                "C1",
                numbers(toFull),
                "N",
                COSInteger.get(1));
    }

    private static UnaryOperator<PageMaker> ink(String family, COSBase names, double... toFull) {
        return m -> m.resource(
                COSName.COLORSPACE, "Cs", new COSArray(List.of(name(family), names, name("DeviceCMYK"), tint(toFull))));
    }

    private static UnaryOperator<PageMaker> state(Object... pairs) {
        return m -> m.resource(COSName.EXT_G_STATE, "S", dictionary(pairs));
    }

    private static UnaryOperator<PageMaker> masked(String operators) {
        return m -> {
            COSStream group = with(form(m, operators, 1, 0, 0, 1, 0, 0), "BBox", numbers(0, 0, 600, 900));
            group.setItem(COSName.GROUP, dictionary("S", name("Transparency"), "CS", name("DeviceGray")));
            return state("SMask", dictionary("S", name("Luminosity"), "G", group))
                    .apply(m);
        };
    }

    private void inks() {
        String spot = "/Cs cs 1 scn 6 100 6 10 re f";
        add("a spot ink", spot, ink("Separation", name("Orange"), 0, .5, 1, 0));
        add("no tint of a spot ink", "/Cs cs 0 scn 6 100 6 10 re f", ink("Separation", name("Orange"), 0, .5, 1, 0));
        add("every plate", spot, ink("Separation", name("All"), 1, 1, 1, 1));
        add("no plate", spot, ink("Separation", name("None"), 1, 1, 1, 1));
        add("white", "1 g 6 100 6 10 re f");
        add("white in four inks", "0 0 0 0 k 6 100 6 10 re f");
        add("yellow", "0 0 1 0 k 6 100 6 10 re f");
        add("covered", INK + "1 g 2 90 30 30 re f");
        add("half covered", INK + "1 g 2 90 7 30 re f");
        add("covered by a circle", INK + "1 g 9 95 m 20 95 20 115 9 115 c -2 115 -2 95 9 95 c f");
        add("half see-through", "/S gs " + INK, state("ca", new COSFloat(.5f)));
        add("wholly see-through", "/S gs " + INK, state("ca", new COSFloat(0)));
        add("masked in part", "/S gs " + INK, masked("1 g 8 0 600 900 re f"));
        add("masked whole", "/S gs " + INK, masked("0 g 0 0 600 900 re f"));
        add("multiplied", "/S gs " + INK, state("BM", name("Multiply")));
        add(
                "white overprints nothing",
                INK + "/S gs 0 0 0 0 k 2 90 30 30 re f",
                state("op", org.apache.pdfbox.cos.COSBoolean.TRUE));
        add(
                "tiles",
                "/Pattern cs /P scn 5 100 9 4 re f",
                m -> m.resource(
                        COSName.PATTERN,
                        "P",
                        with(
                                m.stream("9 0 31 40 re f"),
                                "PatternType",
                                COSInteger.get(1),
                                "PaintType",
                                COSInteger.get(1),
                                "TilingType",
                                COSInteger.get(1),
                                "BBox",
                                numbers(0, 0, 40, 40),
                                "XStep",
                                COSInteger.get(40),
                                "YStep",
                                COSInteger.get(40),
                                "Matrix",
                                numbers(72 / 25.4, 0, 0, 72 / 25.4, 0, 0),
                                "Resources",
                                new COSDictionary())));
        add("through lettering", "q BT 7 Tr /F 8 Tf 5 100 Td (H) Tj ET 0 g 2 90 12 30 re f Q", helvetica());
    }

    private static COSStream picture(PageMaker m, String bytes, int width, int bits, Object... more) {
        COSStream picture = with(
                m.stream(bytes),
                "Type",
                name("XObject"),
                "Subtype",
                name("Image"),
                "Width",
                COSInteger.get(width),
                "Height",
                COSInteger.get(bits == 8 ? bytes.length() / width : bytes.length()),
                "BitsPerComponent",
                COSInteger.get(bits));
        picture.addAll(dictionary(more));
        return picture;
    }

    private void pictures() {
        // columns of 1 mm: white, black, white, black, then white to the right
        String columns = "\u00ff\0\u00ff\0" + "\u00ff".repeat(6);
        String placed = "q 10 0 0 10 4 100 cm /Im Do Q";
        COSName grey = name("DeviceGray");
        add(
                "a picture",
                placed,
                m -> m.resource(COSName.XOBJECT, "Im", picture(m, columns, 10, 8, "ColorSpace", grey)));
        add(
                "a picture turned",
                "q 7.07 7.07 -7.07 7.07 10 100 cm /Im Do Q",
                m -> m.resource(COSName.XOBJECT, "Im", picture(m, "\0", 1, 8, "ColorSpace", grey)));
        add(
                "a picture mirrored",
                "q -10 0 0 10 14 100 cm /Im Do Q",
                m -> m.resource(COSName.XOBJECT, "Im", picture(m, columns, 10, 8, "ColorSpace", grey)));
        add(
                "a stencil",
                "0 g " + placed,
                m -> m.resource(
                        COSName.XOBJECT,
                        "Im",
                        picture(m, "\u00e7", 8, 1, "ImageMask", org.apache.pdfbox.cos.COSBoolean.TRUE)));
        add(
                "a picture with one colour left out",
                placed,
                m -> m.resource(
                        COSName.XOBJECT,
                        "Im",
                        picture(m, "\u0080\u0080\0\0", 4, 8, "ColorSpace", grey, "Mask", numbers(128, 128))));
        add(
                "a masked picture",
                placed,
                m -> m.resource(
                        COSName.XOBJECT,
                        "Im",
                        picture(
                                m,
                                "\0\0\0\0",
                                4,
                                8,
                                "ColorSpace",
                                grey,
                                "SMask",
                                picture(m, "\0\0\u00ff\0", 4, 8, "ColorSpace", grey))));
        add("an inline picture", "q 10 0 0 10 4 100 cm BI /W 4 /H 1 /BPC 8 /CS /G ID \u00ff\0\0\u00ff EI Q");
    }

    private void pages() {
        cases.put(
                "a page with a crop",
                () -> PageMaker.a4()
                        .box(COSName.CROP_BOX, 10, 20, 200, 280)
                        .draw("0 g 16 100 6 10 re f 2 150 10 4 re f"));
        for (int turn = 90; turn < 360; turn += 90) {
            int by = turn;
            cases.put(
                    "a page turned by " + turn,
                    () -> PageMaker.page(100, 100)
                            .with(p -> p.setInt(COSName.ROTATE, by))
                            .draw("0 g 6 30 5 10 re f 30 5 10 5 re f 89 60 5 12 re f 50 88 12 6 re f"));
        }
    }
}
