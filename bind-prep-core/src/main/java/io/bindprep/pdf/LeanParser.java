package io.bindprep.pdf;

import java.io.IOException;
import java.util.AbstractMap;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDocument;
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
final class LeanParser extends PDFParser {
    private final ObjectStreams streams = new ObjectStreams();

    LeanParser(RandomAccessRead source, String password, StreamCacheCreateFunction cache) throws IOException {
        super(source, password, null, null, cache);
        document.close();
        document = new LeanDocument(cache, this);
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

    private static final class LeanDocument extends COSDocument {
        private @Nullable Map<COSObjectKey, Long> unshared;

        LeanDocument(StreamCacheCreateFunction cache, PDFParser parser) {
            super(cache, parser);
        }

        @Override
        public Map<COSObjectKey, Long> getXrefTable() {
            if (unshared == null) {
                unshared = new Unshared(super.getXrefTable());
            }
            return unshared;
        }
    }

    private static final class Unshared extends AbstractMap<COSObjectKey, Long> {
        private final Map<COSObjectKey, Long> table;

        Unshared(Map<COSObjectKey, Long> table) {
            this.table = table;
        }

        /** Says so, to keep the parser from copying the table. */
        @Override
        public boolean isEmpty() {
            return true;
        }

        @Override
        public int size() {
            return table.size();
        }

        @Override
        public @Nullable Long get(@Nullable Object key) {
            return table.get(key);
        }

        @Override
        public boolean containsKey(@Nullable Object key) {
            return table.containsKey(key);
        }

        @Override
        public @Nullable Long put(COSObjectKey key, Long value) {
            return table.put(key, value);
        }

        @Override
        public void clear() {
            table.clear();
        }

        @Override
        public Set<COSObjectKey> keySet() {
            return table.keySet();
        }

        @Override
        public Set<Map.Entry<COSObjectKey, Long>> entrySet() {
            return table.entrySet();
        }
    }
}
