package io.bindprep.pdf.document;

import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.io.RandomAccessStreamCache.StreamCacheCreateFunction;
import org.apache.pdfbox.pdfparser.PDFParser;
import org.jspecify.annotations.Nullable;

/**
 * PDFBox's document, which can forget what it has parsed of pages already looked at.
 *
 * <p>PDFBox keeps every object that was ever asked for: on 17,000 pages more than a small heap holds. What is asked for
 * while {@linkplain #keep keeping} stays, and with it one object for each reference; of the rest {@link #forgetMany} lets go, so
 * that nothing found through it may be compared by identity with what is found afterwards.
 */
public final class LeanDocument extends COSDocument {
    /** Objects met before it is worth to let go of them; measured, see DEVELOPERS.md. */
    public static final int MANY = 20_000;

    private final PDFParser parser;
    private final int many;
    private final XrefTable table = new XrefTable();
    private final Map<COSObjectKey, COSObject> kept = new HashMap<>();
    private Map<COSObjectKey, COSObject> passing = new HashMap<>();
    private boolean keeping = true;

    LeanDocument(StreamCacheCreateFunction cache, PDFParser parser, int many) {
        super(cache, parser);
        this.parser = parser;
        this.many = many;
    }

    /** Tells whether what is asked for from now on stays. */
    public void keep(boolean keep) {
        keeping = keep;
    }

    /** Lets go where much was met that need not stay; whether it did. */
    public boolean forgetMany() {
        if (passing.size() < many) {
            return false;
        }
        passing = new HashMap<>();
        return true;
    }

    /**
     * The object of an entry, read for the caller alone where nobody has read it yet.
     *
     * @param entry an object or a reference to one
     */
    @Nullable
    public COSBase read(COSBase entry) {
        if (!(entry instanceof COSObject reference)) {
            return entry;
        }
        COSObjectKey key = reference.getKey();
        return reference.isDereferenced() || key == null
                ? reference.getObject()
                : new COSObject(key, parser).getObject();
    }

    @Override
    public @Nullable COSObject getObjectFromPool(@Nullable COSObjectKey key) {
        if (key == null) {
            return null;
        }
        COSObject known = kept.get(key);
        if (known != null) {
            return known;
        }
        if (!keeping) {
            return passing.computeIfAbsent(key, k -> new COSObject(k, parser));
        }
        COSObject found = passing.remove(key);
        COSObject keep = found == null ? new COSObject(key, parser) : found;
        kept.put(key, keep);
        return keep;
    }

    @Override
    public void addXRefTable(Map<COSObjectKey, Long> entries) {
        table.addAll(entries);
    }

    @Override
    public Map<COSObjectKey, Long> getXrefTable() {
        return table;
    }
}
