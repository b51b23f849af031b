package io.bindprep;

import io.bindprep.check.Report;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.build.JunitReport;
import io.bindprep.report.build.SarifReport;
import io.bindprep.report.html.ClientHtml;
import io.bindprep.report.html.HtmlReport;
import io.bindprep.report.json.JsonReport;
import io.bindprep.report.text.ClientText;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.text.TextStyle;
import io.bindprep.report.words.ClientMessage;
import io.bindprep.report.xjdf.XjdfTicket;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ReportContext;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The forms in which a report is put on disk, each whole: JSON lists every page. The same bytes for the same report
 * everywhere; text in UTF-8 whose lines end in a line feed.
 */
public enum ReportFormat {
    /** For people, one screen. */
    TEXT(".txt") {
        @Override
        public String write(CheckRequest request, Report report, ReportContext context) {
            return TextReport.write(report, TextStyle.PLAIN);
        }

        @Override
        public String unreadable(String file, UnreadableInputException why, ReportContext context) {
            return TextReport.unreadable(file, why, TextStyle.PLAIN);
        }
    },
    /** For programs, everything; described by {@code io/bindprep/schema/report.schema.json}. */
    JSON(".json") {
        @Override
        public String write(CheckRequest request, Report report, ReportContext context) {
            return JsonReport.write(report, true);
        }

        @Override
        public String unreadable(String file, UnreadableInputException why, ReportContext context) {
            return JsonReport.unreadable(file, why);
        }
    },
    /** For people, with pictures of the pages that are not clear: one file that needs no other. */
    HTML(".html") {
        @Override
        public String write(CheckRequest request, Report report, ReportContext context)
                throws UnreadableInputException {
            return HtmlReport.write(report, BindPrep.pictures(request, report));
        }

        @Override
        public String unreadable(String file, UnreadableInputException why, ReportContext context) {
            return HtmlReport.unreadable(file, why);
        }
    },
    /** For code hosts and editors: SARIF 2.1.0 (OASIS). */
    SARIF(".sarif") {
        @Override
        public String write(CheckRequest request, Report report, ReportContext context) {
            return SarifReport.write(report, context.path());
        }

        @Override
        public String unreadable(String file, UnreadableInputException why, ReportContext context) {
            return SarifReport.unreadable(file, why, context.path());
        }
    },
    /** For build servers: JUnit XML, each check a test. */
    JUNIT(".junit.xml") {
        @Override
        public String write(CheckRequest request, Report report, ReportContext context) {
            return JunitReport.write(report, context.name(), context.took());
        }

        @Override
        public String unreadable(String file, UnreadableInputException why, ReportContext context) {
            return JunitReport.unreadable(file, why, context.name());
        }
    },
    /** For a print shop's other systems: XJDF 2.2 (CIP4), the ticket of the binding. */
    XJDF(".xjdf") {
        @Override
        public String write(CheckRequest request, Report report, ReportContext context) {
            return XjdfTicket.write(report);
        }

        @Override
        public String unreadable(String file, UnreadableInputException why, ReportContext context) {
            return XjdfTicket.unreadable(file, why);
        }
    },
    /** For the designer of the document: what to change, in plain words, with small pictures. */
    CLIENT(".client.html") {
        @Override
        public String write(CheckRequest request, Report report, ReportContext context)
                throws UnreadableInputException {
            return ClientHtml.write(report, BindPrep.pictures(request, report));
        }

        @Override
        public String unreadable(String file, UnreadableInputException why, ReportContext context) {
            return ClientHtml.unreadable(ClientMessage.unreadable(file, why));
        }
    },
    /** The same as Markdown, without pictures; it names the one with pictures where that is written too. */
    CLIENT_MD(".client.md") {
        @Override
        public String write(CheckRequest request, Report report, ReportContext context) {
            return ClientText.write(ClientMessage.of(report), context.pictures());
        }

        @Override
        public String unreadable(String file, UnreadableInputException why, ReportContext context) {
            return ClientText.write(ClientMessage.unreadable(file, why), "");
        }
    };

    private final String ending;

    ReportFormat(String ending) {
        this.ending = ending;
    }

    /** Its name in settings, "junit". */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Ending of its files' names, the point included. */
    public String ending() {
        return ending;
    }

    /** The format of this name; empty where there is none. */
    public static Optional<ReportFormat> of(String id) {
        return Arrays.stream(values()).filter(f -> f.id().equals(id)).findFirst();
    }

    /** Every name. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(ReportFormat::id).toList();
    }

    /**
     * The report in this form, alone.
     *
     * @param request the one that the report came from
     * @throws UnreadableInputException where the form looks at the file again and cannot open it any more
     */
    public String write(CheckRequest request, Report report) throws UnreadableInputException {
        return write(request, report, ReportContext.of(report.document().file()));
    }

    /**
     * The report in this form as a front end writes it, where build servers keep names and times.
     *
     * @throws UnreadableInputException as {@link #write(CheckRequest, Report)}
     */
    public abstract String write(CheckRequest request, Report report, ReportContext context)
            throws UnreadableInputException;

    /** Report in this form on a file that could not be read at all, so that no older report stays in its place. */
    public String unreadable(String file, UnreadableInputException why) {
        return unreadable(file, why, ReportContext.of(file));
    }

    /** The same as a front end writes it. */
    public abstract String unreadable(String file, UnreadableInputException why, ReportContext context);
}
