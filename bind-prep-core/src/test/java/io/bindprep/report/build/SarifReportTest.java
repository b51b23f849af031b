package io.bindprep.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.bindprep.check.FindingKind;
import io.bindprep.check.FindingKinds;
import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Against the schema of SARIF 2.1.0 (OASIS), and what the standard asks beyond it. */
class SarifReportTest {
    private static Report report() {
        return Scenario.of(6)
                .size(6, 215.9, 279.4)
                .hit(3, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Chapter \"one\"")
                .hit(4, MarkKind.TEXT, Verdict.HIT, 12, 5, "two")
                .hit(5, MarkKind.LINE, Verdict.TIGHT, null, 9, "")
                .junk(7)
                .report();
    }

    private static JsonNode valid(String sarif) throws IOException {
        // the schema says draft-07 of itself
        try (var in = SarifReportTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            assertThat(schema.validate(sarif, InputFormat.JSON)).isEmpty();
            assertThat(schema.validate(sarif.replace("\"results\"", "\"outcome\""), InputFormat.JSON))
                    .as("the schema is closed")
                    .isNotEmpty();
        }
        assertThat(sarif).endsWith("}\n").doesNotContain("\r");
        return JsonMapper.shared().readTree(sarif).at("/runs/0");
    }

    @Test
    void aReportIsValidAndEveryFindingAResult() throws IOException {
        Report report = report();
        JsonNode run = valid(SarifReport.write(report));
        assertThat(run.at("/invocations/0/executionSuccessful").booleanValue()).isTrue();
        assertThat(run.get("results")).hasSameSizeAs(report.findings());
        JsonNode text = run.at("/results/0");
        assertThat(text.get("ruleId").stringValue()).isEqualTo("text-hit");
        assertThat(text.get("level").stringValue()).isEqualTo("error");
        assertThat(text.at("/message/text").stringValue())
                .startsWith("2 pages: text in the holes.")
                .contains("Have it moved");
        assertThat(text.get("locations")).hasSize(2);
        assertThat(text.at("/locations/0/logicalLocations/0").toString())
                .isEqualTo("{\"name\":\"3\",\"fullyQualifiedName\":\"page 3\",\"kind\":\"page\"}");
        // regions are of lines, characters or bytes (SARIF 2.1.0, 3.30): a page's own stands in the bag of its location
        // (3.8)
        assertThat(text.at("/locations/0/properties").toString())
                .isEqualTo("{\"page\":3,\"fromBindingEdgeMm\":4.2,\"alongMm\":[100.0,118.04]}");
        assertThat(text.at("/locations/1/properties").toString()).startsWith("{\"page\":4,\"fromBindingEdgeMm\":5.0,");
        assertThat(text.at("/properties/pages").stringValue()).isEqualTo("3-4");
        assertThat(text.at("/properties/measuredMm").decimalValue()).isEqualByComparingTo("4.2");
        assertThat(text.at("/properties/alongMm").toString()).isEqualTo("[100.0,118.04]");
        JsonNode junk = run.at("/results/" + (report.findings().size() - 1));
        assertThat(junk.get("level").stringValue()).isEqualTo("note");
        assertThat(junk.get("locations")).hasSize(1);
        assertThat(junk.at("/locations/0/logicalLocations").isMissingNode()).isTrue();
    }

    // SARIF 2.1.0, 3.27.6: ruleIndex is the place of ruleId among the rules; 3.4.5: index that of the artifact
    @Test
    void indexesPointAtWhatTheyName() throws IOException {
        JsonNode run = valid(SarifReport.write(report()));
        JsonNode rules = run.at("/tool/driver/rules");
        assertThat(rules.findValuesAsString("id"))
                .containsExactlyElementsOf(
                        FindingKinds.all().stream().map(FindingKind::id).toList());
        for (JsonNode result : run.get("results")) {
            assertThat(rules.get(result.get("ruleIndex").intValue()).get("id")).isEqualTo(result.get("ruleId"));
            for (JsonNode location : result.get("locations")) {
                JsonNode artifact = location.at("/physicalLocation/artifactLocation");
                assertThat(run.at("/artifacts/" + artifact.get("index").intValue() + "/location/uri"))
                        .isEqualTo(artifact.get("uri"));
            }
        }
    }

    // SARIF 2.1.0, 3.4.4 and 3.14.14
    @Test
    void aRelativeNameCountsFromABaseAndAnAbsoluteOneFromNone() throws IOException {
        JsonNode run = valid(SarifReport.write(report()));
        String base = run.at("/results/0/locations/0/physicalLocation/artifactLocation/uriBaseId")
                .stringValue();
        assertThat(run.at("/artifacts/0/location/uriBaseId").stringValue()).isEqualTo(base);
        assertThat(run.get("originalUriBaseIds").propertyNames()).containsExactly(base);
        JsonNode absolute = valid(SarifReport.write(
                Scenario.of(2).noHoles().file("/srv/in/book.pdf").report()));
        assertThat(absolute.findValues("uriBaseId")).isEmpty();
        assertThat(absolute.has("originalUriBaseIds")).isFalse();
        JsonNode within = valid(SarifReport.write(
                Scenario.of(2).noHoles().file("/srv/in/book.pdf").report(), "in/book.pdf"));
        assertThat(within.at("/artifacts/0/location/uri").stringValue()).isEqualTo("in/book.pdf");
        assertThat(within.toString()).doesNotContain("/srv");
    }

    @Test
    void aGoodDocumentHasNoResults() throws IOException {
        JsonNode run =
                valid(SarifReport.write(Scenario.of(2).report()).replace("\"results\" : [ ]", "\"results\" : []"));
        assertThat(run.get("results").isArray()).isTrue();
        assertThat(run.get("results")).isEmpty();
        assertThat(run.at("/properties/outcome").stringValue()).isEqualTo("good");
    }

    @Test
    void thousandsOfPagesAreCappedAndAllNamed() throws IOException {
        Scenario scenario = Scenario.of(300);
        for (int page = 1; page <= 300; page++) {
            scenario.unchecked(page, "cut short");
        }
        JsonNode result = valid(SarifReport.write(scenario.report())).at("/results/0");
        assertThat(result.get("locations")).hasSize(SarifReport.MOST_LOCATIONS);
        assertThat(result.at("/properties/pages").stringValue()).isEqualTo("1-300");
    }

    @Test
    void anUnreadableFileIsARunThatFailed() throws IOException {
        JsonNode run = valid(SarifReport.unreadable(
                "letter.pdf",
                new UnreadableInputException(
                        UnreadableInputException.Reason.NOT_PDF, "It is a word processor's file.", "Ask for a PDF.")));
        assertThat(run.at("/invocations/0/executionSuccessful").booleanValue()).isFalse();
        JsonNode notice = run.at("/invocations/0/toolExecutionNotifications/0");
        assertThat(notice.at("/message/text").stringValue()).isEqualTo("It is a word processor's file. Ask for a PDF.");
        assertThat(notice.at("/properties/reason").stringValue()).isEqualTo("not-pdf");
        assertThat(run.at("/tool/driver/notifications/0/id")).isEqualTo(notice.at("/descriptor/id"));
    }

    // RFC 3986, 2.1, 3.3 and 4.2
    @ParameterizedTest
    @CsvSource({
        "a book.pdf, a%20book.pdf",
        "./build/book.pdf, build/book.pdf",
        "größe 100%.pdf, gr%C3%B6%C3%9Fe%20100%25.pdf",
        "a:b.pdf, a%3Ab.pdf",
        "q?x#y.pdf, q%3Fx%23y.pdf",
        "/srv/in/book.pdf, file:///srv/in/book.pdf",
        "C:\\in\\a book.pdf, file:///C:/in/a%20book.pdf",
        "a[1].pdf, a%5B1%5D.pdf"
    })
    void fileNamesAreUriReferences(String name, String uri) {
        assertThat(UriText.of(name)).isEqualTo(uri);
    }

    // the JDK's own reader of URIs
    @ParameterizedTest
    @ValueSource(
            strings = {
                "a b.pdf",
                "ä/ö.pdf",
                "a:b",
                "100%.pdf",
                "x;y=1&z.pdf",
                "\uD83D\uDCD6.pdf",
                "a\"<>^`{|}\\.pdf",
                "..",
                "~"
            })
    void everyNameComesBackFromItsUri(String name) throws IOException {
        URI uri = URI.create(UriText.of(name));
        assertThat(uri.isAbsolute()).isFalse();
        assertThat(uri.getPath()).isEqualTo(name);
        JsonNode run = valid(SarifReport.write(Scenario.of(1).file(name).report()));
        assertThat(run.at("/artifacts/0/location/uri").stringValue()).isEqualTo(uri.toString());
    }
}
