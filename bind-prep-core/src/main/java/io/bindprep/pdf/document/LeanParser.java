package io.bindprep.pdf.document;

import java.io.IOException;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.io.RandomAccessStreamCache.StreamCacheCreateFunction;
import org.apache.pdfbox.pdfparser.PDFParser;
import org.jspecify.annotations.Nullable;

/**
 * PDFBox's parser without its copies of the cross-reference table, and with object streams read object by object.
 *
 * <p>PDFBox 3.0.8 copies the whole table for every object stream it opens, only to share equal keys
 * (BaseParser.getObjectKey): a third of all time on a book of 1,321 pages, and memory without end on one of 16,000. It
 * leaves that out where the table says it is empty, and asks nothing else of that answer.
 */
public final class LeanParser extends PDFParser {
    private final ObjectStreams streams = new ObjectStreams();
    private final LeanDocument lean;

    public LeanParser(RandomAccessRead source, String password, StreamCacheCreateFunction cache, int many)
            throws IOException {
        super(source, password, null, null, cache);
        document.close();
        lean = new LeanDocument(cache, this, many);
        document = lean;
    }

    /** The document that is parsed, which can forget. */
    public LeanDocument lean() {
        return lean;
    }

    @Override
    protected @Nullable COSBase parseObjectStreamObject(long streamNumber, COSObjectKey key) throws IOException {
        COSObjectKey holder = new COSObjectKey(streamNumber, 0);
        if (document.getObjectFromPool(holder).getObject() instanceof COSStream stream) {
            try {
                if (streams.reads(streamNumber, stream)) {
                    return streams.object(streamNumber, stream, key.getNumber(), document);
                }
            } catch (IOException e) {
                return null; // as PDFBox does: the object counts as missing
            }
        }
        return super.parseObjectStreamObject(streamNumber, key);
    }
}
