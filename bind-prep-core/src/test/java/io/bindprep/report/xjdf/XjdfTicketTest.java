package io.bindprep.report.xjdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import io.bindprep.xml.Parsed;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.transform.stream.StreamSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Every ticket against CIP4's schema of XJDF 2.2, and against what that specification asks beyond its schema: HoleCount
 * as runs of holes and spaces, what stands for a missing Pattern, which details go with which binding.
 */
class XjdfTicketTest {
    private static final String SCHEMA = "/org/cip4/lib/xjdf/schema/jdfschema_2_2.xsd";
    private static final Path FIXTURES = Path.of(System.getProperty("bindprep.root"), "fixtures");

    /** First letter of the pattern by binding (XJDF 2.2, Appendix F: wire W, comb P, coil C, rings R). */
    private static final Map<String, String> FAMILY =
            Map.of("Twin", "W", "comb", "P", "CoilBinding", "C", "RingBinding", "R");

    private static Document valid(String xml) throws Exception {
        Parsed.validator(SCHEMA).validate(new StreamSource(new StringReader(xml)));
        Document ticket = Parsed.of(xml);
        constraints(ticket);
        return ticket;
    }

    private static void constraints(Document ticket) {
        int types = ticket.getDocumentElement().getAttribute("Types").split(" ").length;
        for (Element set : all(ticket, "ResourceSet")) {
            String index = set.getAttribute("CombinedProcessIndex");
            assertThat(index.isEmpty() || Integer.parseInt(index) < types)
                    .as("process " + index)
                    .isTrue();
            for (Element resource : all(set, "Resource")) {
                assertThat(all(resource, set.getAttribute("Name"))).hasSize(1);
            }
        }
        for (Element pattern : all(ticket, "HolePattern")) {
            boolean written = Stream.of("Center", "Extent", "Shape").allMatch(pattern::hasAttribute);
            assertThat(pattern.hasAttribute("Pattern") || written)
                    .as("Pattern is required where Center, Extent or Shape is missing")
                    .isTrue();
        }
        Set<String> products = new TreeSet<>();
        all(ticket, "Product").forEach(p -> products.add(p.getAttribute("ID")));
        for (Element intent : all(ticket, "BindingIntent")) {
            if (intent.hasAttribute("ChildRefs")) {
                assertThat(products).contains(intent.getAttribute("ChildRefs").split(" "));
            }
        }
        // each product is a root, or a part of one root
        List<String> named = new ArrayList<>();
        all(ticket, "BindingIntent").stream()
                .filter(i -> i.hasAttribute("ChildRefs"))
                .forEach(i -> named.addAll(List.of(i.getAttribute("ChildRefs").split(" "))));
        all(ticket, "Product").stream()
                .filter(p -> p.getAttribute("IsRoot").equals("true"))
                .forEach(p -> named.add(p.getAttribute("ID")));
        assertThat(named).containsExactlyInAnyOrderElementsOf(products);
        List<Element> params = all(ticket, "LooseBindingParams");
        List<Element> intents = all(ticket, "BindingIntent");
        assertThat(params.isEmpty() || params.size() == intents.size()).isTrue();
        for (int i = 0; i < params.size(); i++) {
            binding(ticket, params.get(i), intents.get(i));
        }
    }

    private static void binding(Document ticket, Element params, Element intent) {
        String type = params.getAttribute("BindingType");
        Element details = only(params, type + "Details");
        String family =
                details.getAttribute("CombShape").equals("Twin") ? "Twin" : type.equals("CombBinding") ? "comb" : type;
        String material = switch (family) {
            case "Twin" -> "Steel";
            case "comb" -> "Plastic";
            default -> "";
        };
        assertThat(intent.getAttribute("BindingType")).isEqualTo(type);
        assertThat(only(intent, type).getAttribute("Material")).isEqualTo(material);
        assertThat(only(intent, "LooseBinding").getAttribute("Diameter")).isEqualTo(details.getAttribute("Diameter"));
        for (Element pattern : all(ticket, "HolePattern")) {
            assertThat(pattern.getAttribute("Pattern"))
                    .satisfiesAnyOf(
                            p -> assertThat(p).isEmpty(), p -> assertThat(p).startsWith(FAMILY.get(family)));
        }
    }

    private static List<Element> all(org.w3c.dom.Node within, String name) {
        NodeList found = within instanceof Document d
                ? d.getElementsByTagNameNS("*", name)
                : ((Element) within).getElementsByTagNameNS("*", name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    private static Element only(org.w3c.dom.Node within, String name) {
        List<Element> found = all(within, name);
        assertThat(found).as(name).hasSize(1);
        return found.get(0);
    }

    private static double[] numbers(String list) {
        return Arrays.stream(list.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private static Report check(String file, String... job) throws Exception {
        Map<String, String> settings = new TreeMap<>();
        for (String setting : job) {
            settings.put(setting.split("=", 2)[0], setting.split("=", 2)[1]);
        }
        return BindPrep.check(CheckRequest.of(FIXTURES.resolve(file), file, JobReader.toJob(JobSettings.of(settings))));
    }

    /** Runs sum up to the pins, and each hole that Center, Pitch and HoleCount tell of is one of the row. */
    private static void assertHoles(Report report, Document ticket) {
        Element params = only(ticket, "HoleMakingParams");
        Element pattern = only(params, "HolePattern");
        int[] runs = Arrays.stream(pattern.getAttribute("HoleCount").split(" "))
                .mapToInt(Integer::parseInt)
                .toArray();
        assertThat(Arrays.stream(runs).skip(1)).allMatch(run -> run > 0);
        assertThat(IntStream.range(0, runs.length)
                        .filter(i -> i % 2 == 0)
                        .map(i -> runs[i])
                        .sum())
                .isEqualTo(report.plan().row().holes().size());
        assertThat(IntStream.range(0, runs.length)
                        .filter(i -> i % 2 == 1)
                        .map(i -> runs[i])
                        .sum())
                .isEqualTo(report.plan().row().pulledPins().size());
        double[] center = numbers(pattern.getAttribute("Center"));
        double[] finished = numbers(all(ticket, "LayoutIntent").get(0).getAttribute("FinishedDimensions"));
        double[] pitch = numbers(pattern.getAttribute("Pitch"));
        int hole = 0;
        int step = 0;
        int skipped = runs[0] == 0 ? runs[1] : 0;
        for (int i = 0; i < runs.length; i++) {
            for (int n = 0; n < runs[i]; n++, step++) {
                if (i % 2 == 0) {
                    double x = center[0] + pitch[0] * (step - skipped);
                    double y = center[1] + pitch[1] * (step - skipped);
                    double centre =
                            report.plan().row().holes().get(hole).centre().inches() * 72;
                    double along = pitch[0] == 0 ? finished[1] - y : x;
                    assertThat(along).isCloseTo(centre, within(0.01));
                    hole++;
                }
            }
        }
    }

    // 33 pitches of 24 pt on an 11 in edge
    @Test
    void pulledPinsAreSpacesOfHoleCount() throws Exception {
        Report report = check("cookbook-letter.pdf", "pitch=3:1", "stock=offset-60");
        Document ticket = valid(XjdfTicket.write(report));
        Element pattern = only(only(ticket, "HoleMakingParams"), "HolePattern");
        assertThat(pattern.getAttribute("Pattern")).isEqualTo("W3_1i-square-0t");
        // 0.2 in centre, 5/32 in hole, 1/3 in pitch (XJDF 2.2, F.10)
        assertThat(pattern.getAttribute("Center")).startsWith("14.4 ");
        assertThat(pattern.getAttribute("Extent")).isEqualTo("11.25 11.25");
        assertThat(pattern.getAttribute("Pitch")).isEqualTo("0 -24");
        assertThat(pattern.getAttribute("Shape")).isEqualTo("Rectangular");
        assertThat(pattern.getAttribute("ReferenceEdge")).isEqualTo("Left");
        assertHoles(report, ticket);
        assertThat(only(ticket, "NodeInfo").getAttribute("Status")).isEqualTo("Suspended");
        // letter, 8.5 x 11 in
        assertThat(all(ticket, "LayoutIntent").get(0).getAttribute("Dimensions"))
                .isEqualTo("612 792");
    }

    @ParameterizedTest
    @CsvSource({
        "binding=wire,pitch=2:1,W2_1i-square-0t,Rectangular",
        "binding=comb,copies=2,P16_9i-rect-0t,Rectangular",
        "binding=coil,pitch=4:1,'',Round",
        "binding=coil,pitch=9.5 mm,C9.5m-round-0t,Round",
        "binding=wire,binding-edge=right,W3_1i-square-0t,Rectangular",
        "binding=wire,binding-edge=top,W3_1i-square-0t,Rectangular"
    })
    void everyEvenRow(String binding, String other, String id, String shape) throws Exception {
        Report report = check("planner-a5.pdf", "trim=a5", binding, other);
        Document ticket = valid(XjdfTicket.write(report));
        Element pattern = only(only(ticket, "HoleMakingParams"), "HolePattern");
        assertThat(pattern.getAttribute("Pattern")).isEqualTo(id);
        assertThat(pattern.getAttribute("Shape")).isEqualTo(shape);
        assertHoles(report, ticket);
        double[] center = numbers(pattern.getAttribute("Center"));
        double[] finished = numbers(all(ticket, "LayoutIntent").get(0).getAttribute("FinishedDimensions"));
        double fromEdge = switch (pattern.getAttribute("ReferenceEdge")) {
            case "Left" -> center[0];
            case "Right" -> finished[0] - center[0];
            default -> finished[1] - center[1];
        };
        assertThat(fromEdge).isCloseTo(report.plan().edgeDistance().inches() * 72, within(0.001));
    }

    // ISO 838:1974: two holes of 6 mm, 80 mm apart, 12 mm from the edge, of which 12 mm is 34.0157 pt
    @Test
    void ringsOfOneSpacing() throws Exception {
        Report report = check("members-handbook-a4.pdf", "binding=rings", "pitch=R2m-ISO");
        Document ticket = valid(XjdfTicket.write(report));
        Element pattern = only(only(ticket, "HoleMakingParams"), "HolePattern");
        assertThat(pattern.getAttribute("HoleCount")).isEqualTo("2");
        assertThat(pattern.getAttribute("Center")).isEqualTo("34.0157 534.3307");
        assertThat(pattern.getAttribute("Extent")).isEqualTo("17.0079 17.0079");
        assertHoles(report, ticket);
    }

    // XJDF 2.2, F.6: holes and slots of two sizes, which no single Extent tells
    @Test
    void holesAndSlotsAreToldByTheirPatternAlone() throws Exception {
        Document ticket = valid(XjdfTicket.write(check("members-handbook-a4.pdf", "binding=rings", "pitch=R6m-4h2s")));
        Element pattern = only(only(ticket, "HoleMakingParams"), "HolePattern");
        assertThat(pattern.getAttribute("Pattern")).isEqualTo("R6m-4h2s");
        assertThat(pattern.getAttribute("HoleCount")).isEqualTo("6");
        assertThat(List.of(
                        pattern.hasAttribute("Extent"), pattern.hasAttribute("Shape"), pattern.hasAttribute("Pitch")))
                .containsOnly(false);
    }

    @Test
    void aGapForAHangerIsASpace() throws Exception {
        Report report = check(
                "calendar-a4-landscape.pdf", "binding-edge=top", "sides=one", "trim=a4 landscape", "hanger=30 mm");
        assertThat(report.plan().row().gap()).isNotNull();
        Document ticket = valid(XjdfTicket.write(report));
        assertHoles(report, ticket);
        Element pattern = only(only(ticket, "HoleMakingParams"), "HolePattern");
        assertThat(pattern.getAttribute("Pitch")).isEqualTo("24 0");
        assertThat(only(ticket, "BindingIntent").getAttribute("BindingSide")).isEqualTo("Top");
        assertThat(all(ticket, "LayoutIntent").get(0).getAttribute("Sides")).isEqualTo("OneSided");
    }

    @Test
    void coversAndInsertsArePartsWithTheirOwnMedia() throws Exception {
        Report report = check(
                "planner-a5.pdf", "covers=front=film-75, back=coverboard-30", "inserts=5-8 on tag-150", "copies=3");
        Document ticket = valid(XjdfTicket.write(report));
        assertThat(only(ticket, "BindingIntent").getAttribute("ChildRefs")).isEqualTo("Part1 Part2 Part3 Part4 Part5");
        assertThat(all(ticket, "Product"))
                .extracting(p -> p.getAttribute("ProductType"))
                .containsExactly("", "Cover", "Body", "Insert", "Body", "Cover");
        assertThat(all(ticket, "MediaIntent"))
                .extracting(m -> m.getAttribute("MediaType"))
                .containsExactly("Film", "Paper", "Paper", "Paper", "Paper");
        // surfaces of the parts add up to those of the book
        List<Integer> pages = all(ticket, "LayoutIntent").stream()
                .map(l -> Integer.valueOf(l.getAttribute("Pages")))
                .toList();
        assertThat(pages.stream().skip(1).mapToInt(Integer::intValue).sum()).isEqualTo(pages.get(0));
        double sheets = all(ticket, "PartAmount").stream()
                .mapToDouble(a -> Double.parseDouble(a.getAttribute("Amount")))
                .sum();
        assertThat(sheets).isEqualTo(3.0 * report.block().leaves().size());
        assertThat(only(ticket, "CombBindingDetails").getAttribute("FlipBackCover"))
                .isEqualTo("true");
    }

    // 12.7 mm of tab stand out opposite the binding edge: 36 pt
    @Test
    void dividersAndFoldOutsAreParts() throws Exception {
        Report report = check(
                "planner-a5.pdf",
                "trim=a5",
                "tabs=before 3 on tag-150 extending 12.7 mm",
                "fold-outs=7-8 in 2 panels on offset-60");
        Document ticket = valid(XjdfTicket.write(report));
        assertThat(all(ticket, "Product"))
                .extracting(p -> p.getAttribute("DescriptiveName"))
                .containsExactly("", "text", "divider", "text", "fold-out, as folded in", "text");
        double[] book = numbers(all(ticket, "LayoutIntent").get(0).getAttribute("FinishedDimensions"));
        double[] divider = numbers(all(ticket, "LayoutIntent").get(2).getAttribute("FinishedDimensions"));
        assertThat(divider[0] - book[0]).isCloseTo(36, within(0.001));
        assertThat(all(ticket, "Media"))
                .extracting(m -> m.hasAttribute("Dimension"))
                .containsExactly(true, true, false);
        assertHoles(report, ticket);
    }

    @Test
    void findingsArePreflightAndAFailedJobIsSuspended() throws Exception {
        Report report = Scenario.of(4)
                .hit(3, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "a & b <c> \u0007")
                .junk(1)
                .report();
        Document ticket = valid(XjdfTicket.write(report));
        Element preflight = only(ticket, "PreflightReport");
        assertThat(preflight.getAttribute("ErrorCount")).isEqualTo("1");
        assertThat(all(preflight, "PreflightCheck"))
                .extracting(c -> c.getAttribute("TestID") + " " + c.getAttribute("Severity"))
                .containsExactly("text-hit Error", "header-junk Information");
        assertThat(all(preflight, "Comment").get(0).getTextContent())
                .startsWith("Page 3: text 4.2 mm from the binding edge");
        assertThat(only(ticket, "NodeInfo").getAttribute("Status")).isEqualTo("Suspended");
        assertThat(all(ticket, "Comment").get(0).getTextContent()).startsWith("Do not print");
        Document good = valid(XjdfTicket.write(Scenario.of(4).report()));
        assertThat(only(good, "NodeInfo").getAttribute("Status")).isEqualTo("Waiting");
    }

    @Test
    void withoutHolesOrElementNothingIsMadeUp() throws Exception {
        Document holeless = valid(XjdfTicket.write(Scenario.of(2).noHoles().report()));
        assertThat(holeless.getDocumentElement().getAttribute("Types")).isEqualTo("Product");
        assertThat(all(holeless, "HoleMakingParams")).isEmpty();
        Document thick = valid(
                XjdfTicket.write(Scenario.of(2).noElement().weightUnknown().report()));
        assertThat(only(thick, "CombBindingDetails").hasAttribute("Diameter")).isFalse();
    }

    @Test
    void aBookThatIsSplitIsAProductForEachVolume() throws Exception {
        Document ticket = valid(XjdfTicket.write(check("cookbook-letter.pdf", "stock=coverboard-48", "copies=3")));
        List<Element> books = all(ticket, "Product").stream()
                .filter(p -> p.getAttribute("IsRoot").equals("true"))
                .toList();
        assertThat(books).hasSizeGreaterThan(1);
        int page = 1;
        double surfaces = 0;
        for (int i = 0; i < books.size(); i++) {
            assertThat(books.get(i).getAttribute("ID")).isEqualTo("Volume" + (i + 1));
            assertThat(books.get(i).getAttribute("Amount")).isEqualTo("3");
            String name = books.get(i).getAttribute("DescriptiveName");
            assertThat(name).startsWith("volume " + (i + 1) + " of " + books.size() + ", pages " + page + "-");
            page = 1 + Integer.parseInt(name.replaceAll(".*pages \\d+-(\\d+).*", "$1"));
            Element layout = only(books.get(i), "LayoutIntent");
            surfaces += Double.parseDouble(layout.getAttribute("Pages"));
            // each goes on its own element, which is larger than its stack
            assertThat(numbers(only(books.get(i), "LooseBinding").getAttribute("Diameter"))[0])
                    .isGreaterThan(numbers(layout.getAttribute("FinishedDimensions"))[2]);
        }
        // 100 pages (fixtures/README.md) on 50 leaves, without covers; 50 leaves for each of 3 copies
        assertThat(page).isEqualTo(101);
        assertThat(surfaces).isEqualTo(100);
        assertThat(only(ticket, "PartAmount").getAttribute("Amount")).isEqualTo("150");
        List<String> ids = books.stream().map(b -> b.getAttribute("ID")).toList();
        for (String params : List.of("HoleMakingParams", "LooseBindingParams")) {
            assertThat(all(ticket, params))
                    .extracting(p -> only(p.getParentNode(), "Part").getAttribute("Product"))
                    .containsExactlyElementsOf(ids);
        }
    }

    @Test
    void theCoversOfEachVolumeArePartsOfItsOwn() throws Exception {
        String covers = "covers=front=film-75, back=coverboard-30";
        Document ticket = valid(XjdfTicket.write(check("cookbook-letter.pdf", "stock=coverboard-48", covers)));
        List<Element> intents = all(ticket, "BindingIntent");
        assertThat(intents).hasSizeGreaterThan(1);
        for (int i = 0; i < intents.size(); i++) {
            String id = "Volume" + (i + 1) + "Part";
            assertThat(intents.get(i).getAttribute("ChildRefs")).isEqualTo(id + "1 " + id + "2 " + id + "3");
        }
    }

    @ParameterizedTest
    @CsvSource({"in/größe 1.pdf, gr_e_1-00ff", "'C:\\in\\a.PDF', a-00ff", ".pdf, _-00ff", "'x y', x_y-00ff"})
    void theJobIdIsAToken(String file, String id) throws Exception {
        Document ticket = valid(XjdfTicket.write(Scenario.of(1).file(file).report()));
        assertThat(ticket.getDocumentElement().getAttribute("JobID")).isEqualTo(id);
        assertThat(ticket.getDocumentElement().getAttribute("DescriptiveName")).isEqualTo(file);
    }

    @Test
    void anUnreadableFileGetsAnAbortedTicket() throws Exception {
        Document ticket = valid(XjdfTicket.unreadable(
                "letter.pdf",
                new UnreadableInputException(
                        UnreadableInputException.Reason.NOT_PDF, "It is a word processor's file.", "Ask for a PDF.")));
        assertThat(only(ticket, "NodeInfo").getAttribute("Status")).isEqualTo("Aborted");
        assertThat(all(ticket, "HoleMakingParams")).isEmpty();
    }

    @Test
    void theCatalogueIsThatOfTheSchema() throws Exception {
        Document schema;
        try (var in = getClass().getResourceAsStream(SCHEMA)) {
            schema = Parsed.of(new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
        }
        Element pattern = all(schema, "element").stream()
                .filter(e -> e.getAttribute("name").equals("HolePattern"))
                .findFirst()
                .orElseThrow();
        List<String> known = all(pattern, "attribute").stream()
                .filter(a -> a.getAttribute("name").equals("Pattern"))
                .flatMap(a -> all(a, "enumeration").stream())
                .map(e -> e.getAttribute("value"))
                .filter(v -> !v.equals("None") && !v.endsWith("-generic"))
                .toList();
        assertThat(HolePattern.CATALOG).containsExactlyInAnyOrderElementsOf(known);
    }

    @Test
    void theSchemaRefusesWhatIsNotXjdf() throws Exception {
        String xml = XjdfTicket.write(Scenario.of(2).report());
        assertThatThrownBy(() -> Parsed.validator(SCHEMA)
                        .validate(new StreamSource(new StringReader(xml.replace("Rectangular", "Square")))))
                .isInstanceOf(SAXException.class);
    }

    /** A pile of paper has a ticket too; nothing in it speaks of a file. */
    @Test
    void aPlanWithoutAPdfClaimsNone() throws Exception {
        Report report = BindPrep.plan(new PlanRequest(
                "Notebooks",
                JobReader.toJob(JobSettings.of(Map.of("trim", "a4", "stock", "bond-20", "copies", 12))),
                Pile.ofLeaves(125)));
        String xml = XjdfTicket.write(report);
        Document ticket = valid(xml);
        assertThat(ticket.getDocumentElement().getAttribute("JobID")).isEqualTo("Notebooks");
        assertThat(all(ticket, "HoleMakingParams")).hasSize(1);
        assertThat(all(ticket, "GeneralID")).isEmpty();
        assertThat(all(ticket, "FileSpec")).isEmpty();
        // 125 sheets are near the 130 of 9/16 in: common practice, no source, from memory
        assertThat(xml).doesNotContain("application/pdf").contains("Type=\"Finding\"", "near its limit");
    }
}
