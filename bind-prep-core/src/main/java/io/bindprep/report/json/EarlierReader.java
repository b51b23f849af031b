package io.bindprep.report.json;

import io.bindprep.check.Earlier;
import io.bindprep.check.Finding;
import io.bindprep.check.Severity;
import io.bindprep.problem.SettingException;
import io.bindprep.wording.Printable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One reading of an earlier report, token by token, within bounds. */
final class EarlierReader {
    private static final int MOST_SEATS = 200_000;
    private static final int MOST_TEXT = 2_000;
    private static final Pattern RULE = Pattern.compile("[a-z][a-z0-9-]{0,60}");
    private static final Pattern RANGE = Pattern.compile("(\\d{1,7})(?:-(\\d{1,7}))?");
    static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(32)
                            .maxStringLength(1_000_000)
                            .maxNumberLength(100)
                            .build())
                    // a million names of another file's members are not to be kept
                    .disable(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES)
                    .build())
            .build();
    // a tree takes some fifty times its text, so its tokens are counted; a finding on 16,000 pages has some 260,000
    private static final JsonMapper TREES = JsonMapper.builder(MAPPER.tokenStreamFactory()
                    .rebuild()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(32)
                            .maxStringLength(1_000_000)
                            .maxNumberLength(100)
                            .maxTokenCount(400_000)
                            .build())
                    .build())
            .build();

    private final String name;
    private final String text;
    private int version = -1;
    private String outcome = "";
    private boolean checked = true;
    private @Nullable JsonNode input;
    private @Nullable JsonNode job;
    private final List<Earlier.Item> items = new ArrayList<>();
    private int seats;

    EarlierReader(String name, String text) {
        this.name = name;
        this.text = text;
    }

    EarlierReport read() throws SettingException {
        try (JsonParser parser = MAPPER.createParser(text)) {
            JsonToken first = parser.nextToken();
            if (first == JsonToken.START_ARRAY) {
                throw wrong("holds several reports", "Name the JSON report of one PDF.");
            }
            if (first != JsonToken.START_OBJECT) {
                throw notOurs();
            }
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                member(parser, parser.currentName());
            }
            return whole();
        } catch (JacksonException e) {
            throw wrong(
                    "is not well-formed JSON, line "
                            + (e.getLocation() == null
                                    ? 1
                                    : Math.max(1, e.getLocation().getLineNr())),
                    "Name a report that check wrote as JSON, whole as it was written.");
        }
    }

    private void member(JsonParser parser, String member) throws SettingException {
        JsonToken value = parser.nextToken();
        switch (member) {
            case "schemaVersion" -> {
                if (value != JsonToken.VALUE_NUMBER_INT) {
                    throw notOurs();
                }
                version = Math.max(0, parser.getValueAsInt(0));
                if (version != JsonReport.SCHEMA_VERSION) {
                    throw wrong(
                            "is in version " + version + " of the report format; this bind-prep reads version "
                                    + JsonReport.SCHEMA_VERSION,
                            "Check the earlier PDF once more with this bind-prep, and name that report.");
                }
            }
            case "outcome" -> outcome = String.valueOf(parser.getValueAsString(""));
            case "documentChecked" -> checked = value == JsonToken.VALUE_TRUE;
            case "input" -> input = tree(parser);
            case "job" -> job = EarlierReport.withoutAcceptances(tree(parser));
            case "findings" -> findings(parser, value);
            default -> parser.skipChildren();
        }
    }

    private void findings(JsonParser parser, JsonToken value) throws SettingException {
        if (value != JsonToken.START_ARRAY) {
            throw notOurs();
        }
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            Earlier.Item item = item(tree(parser));
            seats += Math.max(1, Math.max(item.pages().size(), item.places().size()));
            if (seats > MOST_SEATS) {
                throw wrong("holds more than " + MOST_SEATS + " findings and pages", "Name the report itself.");
            }
            items.add(item);
        }
    }

    /** The object that the parser stands at, read again by itself within its own bounds. */
    private JsonNode tree(JsonParser parser) throws SettingException {
        if (parser.currentToken() == JsonToken.VALUE_NULL) {
            return MAPPER.nullNode();
        }
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            throw notOurs();
        }
        int from = (int) parser.currentTokenLocation().getCharOffset();
        parser.skipChildren();
        int to = (int) parser.currentTokenLocation().getCharOffset() + 1;
        try {
            return TREES.readTree(text.substring(from, to));
        } catch (StreamConstraintsException e) {
            throw wrong("holds more than a report does", "Name the report itself.");
        }
    }

    private EarlierReport whole() throws SettingException {
        String file = input == null ? "" : text(input, "file");
        boolean unreadable = outcome.equals("unreadable");
        if (version < 0 || input == null || file.isEmpty() || !unreadable && (job == null || outcome.isEmpty())) {
            throw !checked && version >= 0
                    ? wrong("is the report of a plan, which says nothing of any page", "Name the report of a PDF.")
                    : notOurs();
        }
        int pages = unreadable ? 0 : input.path("pages").asInt(0);
        if (!unreadable && pages < 1) {
            throw notOurs();
        }
        return new EarlierReport(name, job, new Earlier(file, text(input, "sha256"), pages, items));
    }

    private Earlier.Item item(JsonNode f) throws SettingException {
        String rule = text(f, "rule");
        Severity severity = Arrays.stream(Severity.values())
                .filter(s -> s.name().toLowerCase(Locale.ROOT).equals(text(f, "severity")))
                .findFirst()
                .orElseThrow(this::notOurs);
        if (!RULE.matcher(rule).matches()) {
            throw notOurs();
        }
        List<Finding.Place> places = new ArrayList<>();
        for (JsonNode p : f.path("places")) {
            JsonNode along = p.path("alongMm");
            int page = p.path("page").asInt(0);
            if (page < 1) {
                throw notOurs();
            }
            places.add(new Finding.Place(
                    page,
                    number(p.path("fromBindingEdgeMm")),
                    number(along.path(0)),
                    number(along.path(1)),
                    text(p, "words")));
        }
        return new Earlier.Item(
                rule,
                severity,
                pages(text(f, "pages")),
                text(f, "message"),
                f.path("measuredMm").isNumber() ? number(f.path("measuredMm")) : null,
                f.path("limitMm").isNumber() ? number(f.path("limitMm")) : null,
                places);
    }

    private List<Integer> pages(String ranges) throws SettingException {
        List<Integer> pages = new ArrayList<>();
        for (String range : ranges.isEmpty() ? new String[0] : ranges.split(", ", -1)) {
            Matcher m = RANGE.matcher(range);
            if (!m.matches()) {
                throw notOurs();
            }
            int first = Integer.parseInt(m.group(1));
            int last = m.group(2) == null ? first : Integer.parseInt(m.group(2));
            if (first < 1 || last < first || last - first > MOST_SEATS - pages.size()) {
                throw notOurs();
            }
            for (int page = first; page <= last; page++) {
                pages.add(page);
            }
        }
        return pages;
    }

    private double number(JsonNode node) throws SettingException {
        double number = node.asDouble(Double.NaN);
        if (!Double.isFinite(number)) {
            throw notOurs();
        }
        return number;
    }

    // shown to people: no control or direction mark passes
    private static String text(JsonNode node, String member) {
        String text = Printable.with(" ", node.path(member).asString(""));
        return text.length() > MOST_TEXT ? text.substring(0, MOST_TEXT) : text;
    }

    private SettingException notOurs() {
        return wrong("is not a report of bind-prep", "Name a report that check wrote as JSON.");
    }

    private SettingException wrong(String what, String remedy) {
        return EarlierReport.wrong(name, what, remedy);
    }
}
