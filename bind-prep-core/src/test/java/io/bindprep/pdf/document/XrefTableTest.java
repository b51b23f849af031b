package io.bindprep.pdf.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.apache.pdfbox.cos.COSObjectKey;
import org.junit.jupiter.api.Test;

/** Held against the JDK's own map. */
class XrefTableTest {
    private final Random random = new Random(4);

    private COSObjectKey key() {
        // few enough that keys meet again; generations up to the largest of ISO 32000-1:2008, 7.5.4
        return new COSObjectKey(random.nextInt(500), random.nextInt(4) == 0 ? 65535 : 0);
    }

    @Test
    void holdsWhatAMapHolds() {
        Map<COSObjectKey, Long> map = new HashMap<>();
        for (int i = 0; i < 300; i++) {
            map.put(key(), random.nextLong());
        }
        XrefTable table = new XrefTable();
        table.addAll(map);
        same(table, map);

        for (int i = 0; i < 300; i++) {
            COSObjectKey key = key();
            long place = random.nextLong();
            assertThat(table.put(key, place)).isEqualTo(map.put(key, place));
        }
        same(table, map);

        Map<COSObjectKey, Long> more = new HashMap<>();
        for (int i = 0; i < 300; i++) {
            more.put(key(), random.nextLong());
        }
        table.addAll(more);
        map.putAll(more);
        same(table, map);

        table.clear();
        same(table, Map.of());
        table.addAll(more);
        same(table, more);
    }

    private static void same(XrefTable table, Map<COSObjectKey, Long> map) {
        for (int number = 0; number < 500; number++) {
            for (int generation : new int[] {0, 1, 65535}) {
                COSObjectKey key = new COSObjectKey(number, generation);
                assertThat(table.get(key)).isEqualTo(map.get(key));
                assertThat(table.containsKey(key)).isEqualTo(map.containsKey(key));
            }
        }
        assertThat(table.size()).isEqualTo(map.size());
        assertThat(table.keySet()).containsExactlyInAnyOrderElementsOf(map.keySet());
        assertThat(table.entrySet()).containsExactlyInAnyOrderElementsOf(map.entrySet());
    }

    @Test
    void saysThatItIsEmptySoThatPdfboxCopiesNothing() {
        XrefTable table = new XrefTable();
        table.put(new COSObjectKey(1, 0), 9L);
        assertThat(table.isEmpty()).isTrue();
    }
}
