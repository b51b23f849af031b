package io.bindprep.pdf.document;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSObjectKey;
import org.jspecify.annotations.Nullable;

/**
 * A cross-reference table (ISO 32000-1:2008, 7.5.4) in two arrays, with a map for what is entered later: as a map of
 * objects, half a million entries take 45 MB, so 8.
 */
final class XrefTable extends AbstractMap<COSObjectKey, Long> {
    private static final int GENERATION_BITS = 16;
    private static final int GENERATION_MASK = 0xffff;

    /** PDFBox's keys of number and generation, ascending. */
    private long[] keys = {};

    private long[] places = {};
    private final Map<COSObjectKey, Long> later = new HashMap<>();

    void addAll(Map<COSObjectKey, Long> entries) {
        if (size() > 0) {
            later.putAll(entries);
            return;
        }
        keys = entries.keySet().stream()
                .mapToLong(COSObjectKey::getInternalHash)
                .sorted()
                .toArray();
        places = new long[keys.length];
        entries.forEach((key, place) -> places[Arrays.binarySearch(keys, key.getInternalHash())] = place);
    }

    /** Says so, to keep the parser from copying the table, see {@link LeanParser}. */
    @Override
    public boolean isEmpty() {
        return true;
    }

    @Override
    public int size() {
        return keys.length
                + (int) later.keySet().stream().filter(k -> !listed(k)).count();
    }

    @Override
    public @Nullable Long get(@Nullable Object key) {
        if (!(key instanceof COSObjectKey named)) {
            return null;
        }
        Long entered = later.get(named);
        if (entered != null) {
            return entered;
        }
        int at = Arrays.binarySearch(keys, named.getInternalHash());
        return at < 0 ? null : Long.valueOf(places[at]);
    }

    @Override
    public boolean containsKey(@Nullable Object key) {
        return get(key) != null;
    }

    @Override
    public @Nullable Long put(COSObjectKey key, Long place) {
        Long before = get(key);
        later.put(key, place);
        return before;
    }

    @Override
    public void clear() {
        keys = new long[] {};
        places = new long[] {};
        later.clear();
    }

    @Override
    public Set<Map.Entry<COSObjectKey, Long>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Map.Entry<COSObjectKey, Long>> iterator() {
                Stream<Map.Entry<COSObjectKey, Long>> first = IntStream.range(0, keys.length)
                        .mapToObj(i -> Map.entry(key(i), places[i]))
                        .filter(e -> !later.containsKey(e.getKey()));
                return Stream.concat(first, later.entrySet().stream()).iterator();
            }

            @Override
            public int size() {
                return XrefTable.this.size();
            }
        };
    }

    private COSObjectKey key(int index) {
        return new COSObjectKey(keys[index] >>> GENERATION_BITS, (int) (keys[index] & GENERATION_MASK));
    }

    private boolean listed(COSObjectKey key) {
        return Arrays.binarySearch(keys, key.getInternalHash()) >= 0;
    }
}
