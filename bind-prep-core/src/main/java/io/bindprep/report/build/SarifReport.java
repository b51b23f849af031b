package io.bindprep.report.build;

import io.bindprep.check.Finding;
import io.bindprep.check.FindingKind;
import io.bindprep.check.FindingKinds;
import io.bindprep.check.Recheck;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.json.Json;
import io.bindprep.report.words.RecheckWords;
import io.bindprep.wording.PageLists;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes a report as SARIF 2.1.0 (OASIS): one run with every finding as a result at the file, its pages as logical
 * locations. Lengths are millimetres, as in the JSON report, under {@code properties}.
 */
public final class SarifReport {
    /** Number of pages of one finding that are locations; all stand in its properties. */
    static final int MOST_LOCATIONS = 100;

    // the standard's own place of its schema (SARIF 2.1.0, 3.13.3)
    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    // the name that hosts know for the checkout
    private static final String BASE = "%SRCROOT%";

    private SarifReport() {}

    /**
     * The report, indented, ending in a line feed; the same bytes for the same report everywhere.
     *
     * @throws IllegalArgumentException for a plan without a PDF, of which no page was checked
     */
    public static String write(Report report) {
        return write(report, report.document().file());
    }

    /**
     * The report on the document at this path, relative to the folder of the run where it lies in it.
     *
     * @throws IllegalArgumentException as {@link #write(Report)}
     */
    public static String write(Report report, String path) {
        Checked.require(report);
        ObjectNode root = root();
        ObjectNode run = run(root, path, report.document().sha256());
        run.putArray("invocations").addObject().put("executionSuccessful", true);
        ArrayNode results = run.putArray("results");
        String uri = UriText.of(path);
        report.findings().forEach(f -> result(results.addObject(), f, uri, report.seen(f)));
        Recheck recheck = report.recheck();
        if (recheck != null) {
            recheck.gone().stream()
                    .filter(g -> g.whole() && g.known())
                    .forEach(g -> absent(results.addObject(), g, uri));
        }
        ObjectNode properties = run.putObject("properties");
        properties.put("outcome", Json.word(report.outcome()));
        properties.put("failed", report.failed());
        return Json.text(root);
    }

    /** Report on a file that could not be read at all: a run that did not succeed, which is not one without results. */
    public static String unreadable(String file, UnreadableInputException e) {
        return unreadable(file, e, file);
    }

    /** The same with the path of the document, relative to the folder of the run where it lies in it. */
    public static String unreadable(String file, UnreadableInputException e, String path) {
        ObjectNode root = root();
        ObjectNode run = run(root, path, "");
        ObjectNode invocation = run.putArray("invocations").addObject();
        invocation.put("executionSuccessful", false);
        ObjectNode notice = invocation.putArray("toolExecutionNotifications").addObject();
        notice.putObject("descriptor").put("id", "unreadable");
        notice.put("level", "error");
        notice.putObject("message")
                .put("text", text(String.valueOf(e.getMessage()).replace(file, path), e.remedy()));
        artifact(notice.putArray("locations").addObject(), UriText.of(path));
        notice.putObject("properties").put("reason", Json.word(e.reason()));
        run.putArray("results");
        return Json.text(root);
    }

    private static ObjectNode root() {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("$schema", SCHEMA);
        root.put("version", "2.1.0");
        return root;
    }

    private static ObjectNode run(ObjectNode root, String file, String sha256) {
        ObjectNode run = root.putArray("runs").addObject();
        ObjectNode driver = run.putObject("tool").putObject("driver");
        driver.put("name", "bind-prep");
        ArrayNode rules = driver.putArray("rules");
        FindingKinds.all().forEach(kind -> rule(rules.addObject(), kind));
        ArrayNode notices = driver.putArray("notifications");
        ObjectNode unreadable = notices.addObject();
        unreadable.put("id", "unreadable");
        unreadable.putObject("shortDescription").put("text", "The file could not be read, so nothing is known of it.");
        ObjectNode artifact = run.putArray("artifacts").addObject();
        String uri = UriText.of(file);
        located(artifact.putObject("location"), uri);
        if (!UriText.absolute(uri)) {
            // SARIF 2.1.0, 3.14.14: a base without a URI is known to the host alone
            run.putObject("originalUriBaseIds")
                    .putObject(BASE)
                    .putObject("description")
                    .put("text", "The folder in which the check ran.");
        }
        artifact.put("mimeType", "application/pdf");
        artifact.putArray("roles").add("analysisTarget");
        if (!sha256.isEmpty()) {
            artifact.putObject("hashes").put("sha-256", sha256);
        }
        return run;
    }

    private static void rule(ObjectNode node, FindingKind kind) {
        node.put("id", kind.id());
        node.putObject("shortDescription").put("text", kind.meaning());
        node.putObject("help").put("text", kind.remedy());
        node.putObject("defaultConfiguration").put("level", level(kind.worst()));
    }

    private static void result(ObjectNode node, Finding f, String uri, String fingerprint) {
        node.put("ruleId", f.rule());
        List<String> ids = FindingKinds.all().stream().map(FindingKind::id).toList();
        if (ids.contains(f.rule())) {
            node.put("ruleIndex", ids.indexOf(f.rule()));
        }
        node.put("level", level(f.severity()));
        node.putObject("message").put("text", text(f.message(), f.remedy()));
        ArrayNode locations = node.putArray("locations");
        if (f.pages().isEmpty()) {
            artifact(locations.addObject(), uri);
        }
        Finding.Seen seen = f.seen();
        for (int page : f.pages().subList(0, Math.min(MOST_LOCATIONS, f.pages().size()))) {
            ObjectNode location = locations.addObject();
            artifact(location, uri);
            location.putObject("message").put("text", "Page " + page);
            location.putArray("logicalLocations")
                    .addObject()
                    .put("name", Integer.toString(page))
                    .put("fullyQualifiedName", "page " + page)
                    .put("kind", "page");
            region(location.putObject("properties"), page, seen == null ? List.of() : seen.places());
        }
        // hosts match results of two runs by it (SARIF 2.1.0, 3.27.17)
        node.putObject("partialFingerprints").put("bindPrepSeen/v1", fingerprint);
        Finding.Accepted by = f.accepted();
        if (by != null) {
            // SARIF 2.1.0, 3.35: accepted outside of the code, by a job
            node.putArray("suppressions")
                    .addObject()
                    .put("kind", "external")
                    .put("status", "accepted")
                    .put("justification", by.reason() + " (" + by.who() + ")");
        }
        ObjectNode properties = node.putObject("properties");
        Finding.Since since = f.since();
        if (since != null) {
            node.put("baselineState", baseline(since.change()));
            properties.put("since", RecheckWords.of(f));
        }
        properties.put("pages", PageLists.compact(f.pages()));
        properties.put("remedy", f.remedy());
        if (f.measuredMm() != null) {
            properties.put("measuredMm", Json.rounded(f.measuredMm()));
        }
        if (f.limitMm() != null) {
            properties.put("limitMm", Json.rounded(f.limitMm()));
        }
        Finding.Span along = f.alongMm();
        if (along != null) {
            properties.putArray("alongMm").add(Json.rounded(along.startMm())).add(Json.rounded(along.endMm()));
        }
        if (seen != null) {
            properties.put("stage", seen.stage().name().toLowerCase(Locale.ROOT));
            ArrayNode pins = properties.putArray("pins");
            seen.pins().forEach(pins::add);
        }
    }

    // regions count lines, characters or bytes (SARIF 2.1.0, 3.30), which a page has none of: its own go in the
    // property bag
    private static void region(ObjectNode bag, int page, List<Finding.Place> places) {
        bag.put("page", page);
        places.stream().filter(place -> place.page() == page).findFirst().ifPresent(place -> {
            bag.put("fromBindingEdgeMm", Json.rounded(place.nearMm()));
            bag.putArray("alongMm").add(Json.rounded(place.startMm())).add(Json.rounded(place.endMm()));
        });
    }

    // SARIF 2.1.0, 3.27.24; a result that was there and is worse is an updated one
    private static String baseline(Finding.Change change) {
        return switch (change) {
            case NEW -> "new";
            case WORSE -> "updated";
            case SAME -> "unchanged";
        };
    }

    private static void absent(ObjectNode node, Recheck.Gone gone, String uri) {
        node.put("ruleId", gone.rule());
        node.put("kind", "pass");
        node.put("level", "none");
        node.putObject("message")
                .put("text", "Fixed" + RecheckWords.pages(gone) + " of the earlier file. It was: " + gone.message());
        artifact(node.putArray("locations").addObject(), uri);
        node.put("baselineState", "absent");
        node.putObject("properties").put("pages", PageLists.compact(gone.pages()));
    }

    private static void artifact(ObjectNode location, String uri) {
        located(location.putObject("physicalLocation").putObject("artifactLocation"), uri)
                .put("index", 0);
    }

    // SARIF 2.1.0, 3.4.4: the base that a relative reference counts from
    private static ObjectNode located(ObjectNode artifactLocation, String uri) {
        artifactLocation.put("uri", uri);
        return UriText.absolute(uri) ? artifactLocation : artifactLocation.put("uriBaseId", BASE);
    }

    // viewers show the message alone
    private static String text(String message, String remedy) {
        return message + " " + remedy;
    }

    private static String level(Severity severity) {
        return Json.word(severity);
    }
}
