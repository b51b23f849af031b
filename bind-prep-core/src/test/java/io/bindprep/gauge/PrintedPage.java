package io.bindprep.gauge;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Marks drawn on a page of a PDF, taken from its operators; millimetres from the top left. */
record PrintedPage(double widthMm, double heightMm, List<Line> lines, List<Box> boxes, List<Word> words) {
    private static final double MM = 25.4 / 72;

    record Line(double x1, double y1, double x2, double y2) {
        boolean level() {
            return Math.abs(y1 - y2) < 1e-4;
        }

        boolean upright() {
            return Math.abs(x1 - x2) < 1e-4;
        }

        double length() {
            return Math.hypot(x2 - x1, y2 - y1);
        }
    }

    record Box(double x, double y, double width, double height) {
        double middleX() {
            return x + width / 2;
        }

        double middleY() {
            return y + height / 2;
        }
    }

    /** A word with the middle of its characters. */
    record Word(String text, double x, double y) {}

    static PrintedPage of(PDDocument document, int number) throws IOException {
        PDPage page = document.getPage(number - 1);
        double height = page.getMediaBox().getHeight();
        List<Line> lines = new ArrayList<>();
        List<Box> boxes = new ArrayList<>();
        List<Float> numbers = new ArrayList<>();
        List<double[]> curve = new ArrayList<>();
        double fromX = 0;
        double fromY = 0;
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSNumber n) {
                numbers.add(n.floatValue());
            } else if (token instanceof Operator operator) {
                int n = numbers.size();
                switch (operator.getName()) {
                    case "m" -> {
                        fromX = numbers.get(n - 2);
                        fromY = numbers.get(n - 1);
                        curve.clear();
                    }
                    case "c" -> curve.add(new double[] {numbers.get(n - 2) * MM, (height - numbers.get(n - 1)) * MM});
                    case "s" -> boxes.add(around(curve));
                    case "l" ->
                        lines.add(new Line(
                                fromX * MM,
                                (height - fromY) * MM,
                                numbers.get(n - 2) * MM,
                                (height - numbers.get(n - 1)) * MM));
                    case "re" ->
                        boxes.add(new Box(
                                numbers.get(n - 4) * MM,
                                (height - numbers.get(n - 3) - numbers.get(n - 1)) * MM,
                                numbers.get(n - 2) * MM,
                                numbers.get(n - 1) * MM));
                    default -> {}
                }
                numbers.clear();
            } else if (token instanceof COSBase) {
                numbers.clear();
            }
        }
        return new PrintedPage(page.getMediaBox().getWidth() * MM, height * MM, lines, boxes, words(document, number));
    }

    // of a circle or ellipse of four arcs, whose ends are its extremes
    private static Box around(List<double[]> ends) {
        double left = ends.stream().mapToDouble(p -> p[0]).min().orElseThrow();
        double top = ends.stream().mapToDouble(p -> p[1]).min().orElseThrow();
        double right = ends.stream().mapToDouble(p -> p[0]).max().orElseThrow();
        double bottom = ends.stream().mapToDouble(p -> p[1]).max().orElseThrow();
        return new Box(left, top, right - left, bottom - top);
    }

    private static List<Word> words(PDDocument document, int number) throws IOException {
        List<Word> words = new ArrayList<>();
        List<TextPosition> word = new ArrayList<>();
        // character by character as they are shown: the stripper's own words mix lines that stand close
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition at) {
                TextPosition before = word.isEmpty() ? null : word.get(word.size() - 1);
                boolean goesOn = before != null
                        && Math.abs(before.getYDirAdj() - at.getYDirAdj()) < 0.01
                        && Math.abs(before.getXDirAdj() + before.getWidthDirAdj() - at.getXDirAdj()) < 0.5;
                if (!goesOn || at.getUnicode().isBlank()) {
                    add(words, word);
                }
                if (!at.getUnicode().isBlank()) {
                    word.add(at);
                }
            }
        };
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        stripper.writeText(document, new StringWriter());
        add(words, word);
        return words;
    }

    private static void add(List<Word> words, List<TextPosition> word) {
        if (!word.isEmpty()) {
            TextPosition first = word.get(0);
            TextPosition last = word.get(word.size() - 1);
            // a digit's middle lies 0.355 em above its base line
            words.add(new Word(
                    word.stream().map(TextPosition::getUnicode).collect(Collectors.joining()),
                    (first.getXDirAdj() + last.getXDirAdj() + last.getWidthDirAdj()) / 2 * MM,
                    (first.getYDirAdj() - 0.355 * first.getFontSizeInPt()) * MM));
            word.clear();
        }
    }
}
