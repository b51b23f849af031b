package io.bindprep.report.xjdf;

import io.bindprep.block.Leaf;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.paper.Stock;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.words.SafetyLine;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.wording.FileNames;
import io.bindprep.xml.XmlText;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Writes a report as a ticket of the binding: XJDF 2.2 (CIP4), the product as intents and the processes HoleMaking and
 * LooseBinding with their parameters. Lengths are points of 1/72 in, thickness micrometres, weight grams a square metre.
 *
 * <p>A plan without a PDF gives the same ticket, without the digest and the preflight of a file that is not there; its
 * findings stand as comments.
 *
 * <p>A book that is split is a product for each volume, with holes and element of its own. A job that failed is suspended and says so; a file that could not be read gets an aborted ticket without processes,
 * so that no older ticket of the same name stays in its place.
 */
public final class XjdfTicket {
    private static final String NAMESPACE = "http://www.CIP4.org/JDFSchema_2_0";

    private static final int DIGEST_IN_ID = 12;

    private XjdfTicket() {}

    /** The ticket, indented, ending in a line feed; the same bytes for the same report everywhere. */
    public static String write(Report report) {
        List<BoundBook> books = BoundBook.of(report);
        boolean punched = !report.plan().row().holes().isEmpty();
        XmlText xml = opened(
                jobId(report),
                punched ? "Product HoleMaking LooseBinding" : "Product",
                report.document().file(),
                VerdictSentence.of(report));
        xml.leaf("Comment", SafetyLine.TEXT, "Type", "Caution");
        if (!report.documentChecked()) {
            report.findings().forEach(f -> xml.leaf("Comment", f.message() + "\nDo: " + f.remedy(), "Type", "Finding"));
        }
        if (report.documentChecked()) {
            xml.empty(
                    "GeneralID",
                    "IDUsage",
                    "InputSHA256",
                    "IDValue",
                    report.document().sha256());
        }
        xml.open("ProductList");
        books.forEach(book -> new Products(report, book, xml).write());
        xml.close();
        status(xml, report.failed() ? "Suspended" : "Waiting", report.failed() ? "FindingsAtOrAboveFailOn" : "");
        if (punched) {
            resources(xml, "HoleMakingParams", "1", books, book -> {
                xml.open("HoleMakingParams");
                new HolePattern(report, book.plan()).write(xml);
                xml.close();
            });
            resources(xml, "LooseBindingParams", "2", books, book -> new LooseBinding(report, book.plan()).params(xml));
        }
        media(xml, report, books, punched);
        if (report.documentChecked()) {
            preflight(xml, report);
        }
        return xml.close().finish();
    }

    /** Report on a file that could not be read at all. */
    public static String unreadable(String file, UnreadableInputException e) {
        XmlText xml = opened(nmtoken(file), "Product", file, e.getMessage() + "\n" + e.remedy());
        status(xml, "Aborted", "InputUnreadable");
        return xml.close().finish();
    }

    private static XmlText opened(String id, String types, String name, String verdict) {
        XmlText xml = new XmlText();
        xml.open("XJDF", "xmlns", NAMESPACE, "Version", "2.2", "JobID", id, "Types", types, "DescriptiveName", name);
        return xml.leaf("Comment", verdict, "Type", "Verdict");
    }

    private static void status(XmlText xml, String status, String details) {
        xml.open("ResourceSet", "Name", "NodeInfo", "Usage", "Input").open("Resource");
        xml.empty("NodeInfo", "Status", status, "StatusDetails", details);
        xml.close().close();
    }

    /** One for each book; that of a volume says which. */
    private static void resources(
            XmlText xml, String name, String process, List<BoundBook> books, Consumer<BoundBook> content) {
        xml.open("ResourceSet", "Name", name, "Usage", "Input", "CombinedProcessIndex", process);
        for (BoundBook book : books) {
            xml.open("Resource");
            if (books.size() > 1) {
                // by its name the key for a product of the list, from memory: the schema does not say what it holds
                xml.empty("Part", "Product", book.id());
            }
            content.accept(book);
            xml.close();
        }
        xml.close();
    }

    /** A stock in one size; none is given for a fold-out, which goes into the printer unfolded. */
    private record Sheet(Stock stock, String size) {
        static Sheet of(Report report, Leaf leaf) {
            return new Sheet(
                    leaf.stock(), leaf.role() == Leaf.Role.FOLD_OUT ? "" : FinishedSize.flat(report, leaf.extension()));
        }
    }

    /** Each stock with the sheets that all copies take, at the finished size. */
    private static void media(XmlText xml, Report report, List<BoundBook> books, boolean punched) {
        Map<Sheet, Long> sheets = new LinkedHashMap<>();
        for (BoundBook book : books) {
            for (Leaf leaf : book.leaves()) {
                sheets.merge(Sheet.of(report, leaf), (long) report.job().copies(), Long::sum);
            }
        }
        xml.open("ResourceSet", "Name", "Media", "Usage", "Input", "CombinedProcessIndex", punched ? "1" : "");
        sheets.forEach((sheet, amount) -> {
            Stock stock = sheet.stock();
            xml.open("Resource", "DescriptiveName", stock.name());
            xml.open("AmountPool")
                    .empty("PartAmount", "Amount", Long.toString(amount))
                    .close();
            BigDecimal weight = stock.grammage();
            xml.empty(
                    "Media",
                    "Dimension",
                    sheet.size(),
                    "MediaType",
                    Products.mediaType(stock),
                    "MediaUnit",
                    "Sheet",
                    "Thickness",
                    Points.plain(stock.caliperUm()),
                    "Weight",
                    weight == null ? "" : Points.plain(weight));
            xml.close();
        });
        xml.close();
    }

    private static void preflight(XmlText xml, Report report) {
        xml.open("ResourceSet", "Name", "PreflightReport").open("Resource");
        xml.open(
                "PreflightReport",
                "ErrorCount",
                count(report, Severity.ERROR),
                "WarningCount",
                count(report, Severity.WARNING));
        xml.empty(
                "FileSpec",
                "MimeType",
                "application/pdf",
                "NPage",
                Integer.toString(report.document().pages().size()),
                "UserFileName",
                report.document().file());
        report.findings().forEach(f -> Preflight.check(xml, f));
        xml.close().close().close();
    }

    private static String count(Report report, Severity severity) {
        return Long.toString(
                report.findings().stream().filter(f -> f.counts(severity)).count());
    }

    // the same file in the same name is the same job
    private static String jobId(Report report) {
        String digest = report.document().sha256();
        String name = nmtoken(report.document().file());
        return digest.isEmpty() ? name : name + "-" + digest.substring(0, Math.min(DIGEST_IN_ID, digest.length()));
    }

    /** The file's own name as far as an NMTOKEN takes it. */
    private static String nmtoken(String file) {
        String name = FileNames.last(file);
        String stem =
                name.toLowerCase(java.util.Locale.ROOT).endsWith(".pdf") ? name.substring(0, name.length() - 4) : name;
        String token = stem.replaceAll("[^A-Za-z0-9._-]+", "_");
        return token.isEmpty() ? "_" : token;
    }
}
