package io.bindprep.pdf.edit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.jspecify.annotations.Nullable;

/** A content stream's operators, each with where it stands among the bytes. */
final class ContentTokens extends PDFStreamParser {
    /** As many as a page may hold to be read (Budget). */
    private static final int MOST_OPERATORS = 3_000_000;

    /** More operands than any operator takes; what is beyond is no content stream. */
    private static final int MOST_OPERANDS = 1_000;

    private final long length;
    private int operators;

    /**
     * One operator.
     *
     * @param start offset of its first operand, white space before it included
     * @param end offset behind it
     */
    record Step(String name, List<COSBase> operands, int start, int end) {}

    ContentTokens(byte[] content) {
        super(content);
        this.length = content.length;
    }

    /** The next operator; null at the end. */
    @Nullable
    Step next() throws IOException {
        int start = at();
        List<COSBase> operands = new ArrayList<>();
        for (Object token = parseNextToken(); token != null; token = parseNextToken()) {
            if (token instanceof Operator operator) {
                if (++operators > MOST_OPERATORS) {
                    throw new IOException("more operators than a page may hold");
                }
                return new Step(operator.getName(), operands, start, at());
            }
            if (token instanceof COSBase operand && operands.size() < MOST_OPERANDS) {
                operands.add(operand);
            }
        }
        return null;
    }

    private int at() throws IOException {
        return (int) (source.isClosed() ? length : source.getPosition());
    }
}
