package io.bindprep.report.xjdf;

import io.bindprep.block.Leaf;
import io.bindprep.check.Report;
import io.bindprep.job.Sides;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import io.bindprep.xml.XmlText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** One product as intents: a book or volume, and where it has covers or inserts each run of like leaves as a part of it. */
final class Products {
    /** Leaves that follow each other and are alike. */
    private record ProductPart(Leaf first, int leaves) {
        boolean takes(Leaf leaf) {
            return first.role() == leaf.role()
                    && first.stock().equals(leaf.stock())
                    && first.layers() == leaf.layers()
                    && first.extension().equals(leaf.extension());
        }
    }

    private final Report report;
    private final BoundBook book;
    private final XmlText xml;
    private final List<ProductPart> parts;

    Products(Report report, BoundBook book, XmlText xml) {
        this.report = report;
        this.book = book;
        this.xml = xml;
        this.parts = parts(book.leaves());
    }

    private static List<ProductPart> parts(List<Leaf> leaves) {
        List<ProductPart> parts = new ArrayList<>();
        for (Leaf leaf : leaves) {
            ProductPart last = parts.isEmpty() ? null : parts.get(parts.size() - 1);
            if (last != null && last.takes(leaf)) {
                parts.set(parts.size() - 1, new ProductPart(last.first(), last.leaves() + 1));
            } else {
                parts.add(new ProductPart(leaf, 1));
            }
        }
        return parts;
    }

    void write() {
        int copies = report.job().copies();
        xml.open(
                "Product",
                "ID",
                book.id(),
                "IsRoot",
                "true",
                "Amount",
                Integer.toString(copies),
                "DescriptiveName",
                book.name());
        binding();
        layout(
                FinishedSize.flat(report, Length.ZERO),
                book.leaves().size(),
                book.stack().nominal());
        // a book of one part is that part: ChildRefs takes two at least
        if (parts.size() == 1) {
            media(parts.get(0).first().stock());
        }
        xml.close();
        if (parts.size() > 1) {
            for (int i = 0; i < parts.size(); i++) {
                part(parts.get(i), id(i), copies);
            }
        }
    }

    private String id(int index) {
        return (book.name().isEmpty() ? "" : book.id()) + "Part" + (index + 1);
    }

    private void binding() {
        LooseBinding element = new LooseBinding(report, book.plan());
        xml.open("Intent", "Name", "BindingIntent");
        xml.open(
                "BindingIntent",
                "BindingSide",
                LooseBinding.edge(report.job().bindingEdge()),
                "BindingType",
                element.bindingType(),
                "ChildRefs",
                parts.size() == 1
                        ? ""
                        : IntStream.range(0, parts.size()).mapToObj(this::id).collect(Collectors.joining(" ")));
        element.intent(xml);
        xml.close().close();
    }

    private void part(ProductPart part, String id, int copies) {
        xml.open(
                "Product",
                "ID",
                id,
                "Amount",
                Integer.toString(copies),
                "DescriptiveName",
                name(part.first().role()),
                "ProductType",
                type(part.first().role()));
        layout(
                FinishedSize.flat(report, part.first().extension()),
                part.leaves(),
                Length.ofMicrometres(part.first().nominalUm()).times(part.leaves()));
        media(part.first().stock());
        xml.close();
    }

    private void layout(String size, int leaves, Length thickness) {
        xml.open("Intent", "Name", "LayoutIntent");
        xml.empty(
                "LayoutIntent",
                "Dimensions",
                size,
                "FinishedDimensions",
                size + " " + Points.of(thickness),
                // surfaces, blank ones included
                "Pages",
                Integer.toString(2 * leaves),
                "Sides",
                sides(report.job().sides()));
        xml.close();
    }

    private void media(Stock stock) {
        BigDecimal weight = stock.grammage();
        xml.open("Intent", "Name", "MediaIntent");
        xml.empty(
                "MediaIntent",
                "MediaQuality",
                stock.name(),
                "MediaType",
                mediaType(stock),
                "Thickness",
                Points.plain(stock.caliperUm()),
                "Weight",
                weight == null ? "" : Points.plain(weight));
        xml.close();
    }

    static String mediaType(Stock stock) {
        return switch (stock.kind()) {
            case PAPER, BOARD -> "Paper";
            case FILM -> "Film";
        };
    }

    private static String sides(Sides sides) {
        return switch (sides) {
            case ONE -> "OneSided";
            case TWO -> "TwoSidedHeadToHead";
            case TWO_HEAD_TO_FOOT -> "TwoSidedHeadToFoot";
        };
    }

    private static String type(Leaf.Role role) {
        return switch (role) {
            case FRONT_COVER, BACK_COVER -> "Cover";
            case TEXT -> "Body";
            case INSERT, TAB, FOLD_OUT -> "Insert";
        };
    }

    private static String name(Leaf.Role role) {
        return switch (role) {
            case FRONT_COVER -> "front cover";
            case TEXT -> "text";
            case INSERT -> "insert";
            case TAB -> "divider";
            case FOLD_OUT -> "fold-out, as folded in";
            case BACK_COVER -> "back cover";
        };
    }
}
