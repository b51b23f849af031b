package io.bindprep.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class JsonReportTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private static Report report() {
        return Scenario.of(6)
                .size(6, 215.9, 279.4)
                .hit(3, MarkKind.TEXT, Verdict.HIT, 12, 4.20004, "Chapter \"one\"")
                .hit(4, MarkKind.TEXT, Verdict.HIT, 12, 5, "two")
                .hit(5, MarkKind.LINE, Verdict.TIGHT, null, 9, "")
                .report();
    }

    private static JsonNode json(Report report, boolean all) {
        return MAPPER.readTree(JsonReport.write(report, all));
    }

    @Test
    void theNamesOfTheSchemaInTheirOrder() {
        JsonNode root = json(report(), false);
        assertThat(root.propertyNames())
                .containsExactly(
                        "schemaVersion",
                        "outcome",
                        "failed",
                        "documentChecked",
                        "input",
                        "job",
                        "sheets",
                        "leaves",
                        "covers",
                        "stack",
                        "plan",
                        "whatIf",
                        "volumes",
                        "tooThick",
                        "materials",
                        "assembly",
                        "verdicts",
                        "pages",
                        "findings");
        assertThat(root.get("input").propertyNames()).containsExactly("file", "sha256", "pages");
        assertThat(root.get("stack").propertyNames()).contains("nominalMm", "minMm", "maxMm", "weightG");
        assertThat(root.get("plan").propertyNames())
                .contains(
                        "method",
                        "pattern",
                        "pitchMm",
                        "elementMm",
                        "elementName",
                        "edgeDistanceMm",
                        "holeMm",
                        "holes",
                        "firstHoleMm",
                        "pulledPins",
                        "lifts",
                        "pitchName",
                        "loops",
                        "closerMm",
                        "bindingMarginMm",
                        "punchingToleranceMm",
                        "holeZoneMm",
                        "because");
    }

    @Test
    void everyValueWhereTheSchemaHasIt() {
        JsonNode root = json(report(), false);
        assertThat(root.at("/schemaVersion").intValue()).isEqualTo(2);
        assertThat(root.at("/outcome").stringValue()).isEqualTo("findings");
        assertThat(root.at("/failed").booleanValue()).isTrue();
        assertThat(root.at("/input/file").stringValue()).isEqualTo("thesis.pdf");
        assertThat(root.at("/input/pages").intValue()).isEqualTo(6);
        assertThat(root.at("/sheets").intValue()).isEqualTo(3);
        assertThat(root.at("/leaves").intValue()).isEqualTo(3);
        assertThat(root.at("/covers").intValue()).isZero();
        assertThat(root.at("/stack/nominalMm").decimalValue()).isEqualByComparingTo("4.9");
        assertThat(root.at("/stack/weightG").decimalValue()).isEqualByComparingTo("210");
        assertThat(root.at("/plan/method").stringValue()).isEqualTo("wire");
        // 1/3 in
        assertThat(root.at("/plan/pitchMm").decimalValue()).isEqualByComparingTo("8.4667");
        assertThat(root.at("/plan/elementMm").decimalValue()).isEqualByComparingTo("9.525");
        assertThat(root.at("/plan/elementName").stringValue()).isEqualTo("3/8 in");
        // 5/32 in is 3.96875 mm
        assertThat(root.at("/plan/holeMm/1").decimalValue()).isEqualByComparingTo("3.9688");
        assertThat(root.at("/plan/holes").intValue()).isEqualTo(34);
        assertThat(root.at("/plan/firstHoleMm").decimalValue()).isEqualByComparingTo("8.8");
        assertThat(root.at("/plan/pulledPins").toString()).isEqualTo("[35,36]");
        assertThat(root.at("/plan/lifts").toString()).isEqualTo("[14,14,14]");
        assertThat(root.at("/job/sides").stringValue()).isEqualTo("two");
        assertThat(root.at("/job/failOn").stringValue()).isEqualTo("error");
        assertThat(root.at("/job/trim").isNull()).isTrue();
        assertThat(root.at("/verdicts").toString()).isEqualTo("{\"clear\":3,\"tight\":1,\"hit\":2,\"unchecked\":0}");
    }

    @Test
    void onlyPagesNotClearUnlessAllAreAskedFor() {
        JsonNode some = json(report(), false).get("pages");
        assertThat(some).hasSize(3);
        JsonNode page = some.get(0);
        assertThat(page.propertyNames()).containsExactly("page", "side", "trimMm", "bindingEdge", "verdict", "nearest");
        assertThat(page.at("/page").intValue()).isEqualTo(3);
        assertThat(page.at("/side").stringValue()).isEqualTo("recto");
        assertThat(page.at("/trimMm").toString()).isEqualTo("[210.0,297.0]");
        assertThat(page.at("/bindingEdge").stringValue()).isEqualTo("left");
        assertThat(page.at("/verdict").stringValue()).isEqualTo("hit");
        assertThat(page.at("/nearest").toString())
                .isEqualTo(
                        "{\"kind\":\"text\",\"fromBindingEdgeMm\":4.2,\"alongMm\":[100.0,118.04],\"stage\":\"geometry\","
                                + "\"words\":\"Chapter \\\"one\\\"\"}");
        assertThat(some.get(2).get("nearest").has("words")).isFalse();
        JsonNode all = json(report(), true).get("pages");
        assertThat(all).hasSize(6);
        assertThat(all.get(0).get("nearest").isNull()).isTrue();
        assertThat(all.get(1).get("side").stringValue()).isEqualTo("verso");
    }

    @Test
    void findingsWithTheirNumbers() {
        JsonNode findings = json(report(), false).get("findings");
        JsonNode text = findings.get(0);
        assertThat(text.propertyNames())
                .containsExactly(
                        "rule",
                        "severity",
                        "pages",
                        "message",
                        "remedy",
                        "measuredMm",
                        "limitMm",
                        "alongMm",
                        "stage",
                        "pins",
                        "words",
                        "places",
                        "seen");
        assertThat(text.get("rule").stringValue()).isEqualTo("text-hit");
        assertThat(text.get("severity").stringValue()).isEqualTo("error");
        assertThat(text.get("pages").stringValue()).isEqualTo("3-4");
        assertThat(text.get("measuredMm").decimalValue()).isEqualByComparingTo("4.2");
        assertThat(text.get("alongMm").toString()).isEqualTo("[100.0,118.04]");
        assertThat(text.get("stage").stringValue()).isEqualTo("geometry");
        assertThat(text.get("pins").toString()).isEqualTo("[12]");
    }

    @Test
    void whatIsUnknownIsNullNotZero() {
        JsonNode root = json(Scenario.of(2).noElement().weightUnknown().report(), false);
        assertThat(root.at("/stack/weightG").isNull()).isTrue();
        assertThat(root.at("/plan/elementMm").isNull()).isTrue();
        assertThat(root.at("/plan/elementName").isNull()).isTrue();
        assertThat(root.at("/plan/closerMm").isNull()).isTrue();
    }

    @Test
    void anUnreadPageSaysWhy() {
        JsonNode page =
                json(Scenario.of(2).unchecked(2, "cut short").report(), false).at("/pages/0");
        assertThat(page.get("verdict").stringValue()).isEqualTo("unchecked");
        assertThat(page.get("unchecked").stringValue()).isEqualTo("cut short");
    }

    @Test
    void whatAnotherDepthWouldDo() {
        JsonNode other = json(
                        Scenario.of(6).whatIf(List.of(3, 4, 6), List.of(5)).report(), false)
                .at("/whatIf/1");
        assertThat(other.get("chosen").booleanValue()).isFalse();
        assertThat(other.get("hitPages").stringValue()).isEqualTo("3-4, 6");
        assertThat(other.get("tightPages").stringValue()).isEqualTo("5");
        assertThat(other.get("uncheckedPages").stringValue()).isEqualTo("2");
        assertThat(other.at("/depth/centreMm").decimalValue()).isEqualByComparingTo("5.08");
        assertThat(other.at("/depth/turnsFreely").booleanValue()).isTrue();
        assertThat(other.get("holes").intValue()).isEqualTo(34);
        JsonNode unknown = json(Scenario.of(2).noElement().report(), false).at("/plan/depth");
        assertThat(unknown.get("turnsFreely").isNull()).isTrue();
        assertThat(unknown.get("decidedBy").stringValue()).isEqualTo("element");
    }

    @Test
    void aTrimAsked() {
        JsonNode trim = json(
                        Scenario.of(2)
                                .trim("A4", Length.ofMm(210), Length.ofMm(297))
                                .report(),
                        false)
                .at("/job/trim");
        assertThat(trim.toString()).isEqualTo("{\"name\":\"A4\",\"widthMm\":210.0,\"heightMm\":297.0}");
    }

    @Test
    void theSameBytesInEveryLocaleAndOnEverySystem() {
        String expected = JsonReport.write(report(), true);
        assertThat(expected).doesNotContain("\r").endsWith("}\n");
        Locale before = Locale.getDefault();
        String line = System.getProperty("line.separator");
        try {
            System.setProperty("line.separator", "\r\n");
            for (String language : new String[] {"en", "de", "tr", "ar-EG-u-nu-arab"}) {
                Locale.setDefault(Locale.forLanguageTag(language));
                assertThat(JsonReport.write(report(), true)).as(language).isEqualTo(expected);
            }
        } finally {
            Locale.setDefault(before);
            System.setProperty("line.separator", line);
        }
    }

    @Test
    void aNumberThatIsNoneFailsInsteadOfBeingWritten() {
        Report report =
                Scenario.of(1).hit(1, MarkKind.LINE, Verdict.TIGHT, null, 9, "").report();
        assertThat(JsonReport.write(report, true)).doesNotContain("NaN");
        assertThatThrownBy(() -> Json.rounded(Double.NaN)).isInstanceOf(NumberFormatException.class);
        assertThatThrownBy(() -> Json.rounded(Double.POSITIVE_INFINITY)).isInstanceOf(NumberFormatException.class);
    }

    @Test
    void anUnreadableFile() {
        JsonNode root = MAPPER.readTree(JsonReport.unreadable(
                "letter.pdf",
                new UnreadableInputException(
                        UnreadableInputException.Reason.NOT_PDF, "It is a word processor's file.", "Ask for a PDF.")));
        assertThat(root.at("/outcome").stringValue()).isEqualTo("unreadable");
        assertThat(root.at("/input/file").stringValue()).isEqualTo("letter.pdf");
        assertThat(root.get("problem").toString())
                .isEqualTo("{\"reason\":\"not-pdf\",\"message\":\"It is a word processor's file.\","
                        + "\"remedy\":\"Ask for a PDF.\"}");
    }
}
