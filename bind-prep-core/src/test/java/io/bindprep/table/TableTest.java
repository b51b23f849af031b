package io.bindprep.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TableTest {
    @Test
    void readsQuotedCellsAndNotes() {
        // quoting by RFC 4180, 2.5 to 2.7
        Table table = Table.parse("", "# a note\nid,source\nx,\"one, \"\"two\"\"\"\n\ny,\n");
        assertThat(table.notes()).containsExactly("a note");
        assertThat(table.rows()).hasSize(2);
        assertThat(table.rows().get(0).get("source")).isEqualTo("one, \"two\"");
        assertThat(table.rows().get(1).get("source")).isEmpty();
        assertThat(table.rows().get(1).line()).isEqualTo(5);
    }

    @Test
    void namesTheLineOfARaggedRow() {
        assertThatThrownBy(() -> Table.parse("", "a,b\n1\n")).hasMessageContaining("line 2");
        assertThatThrownBy(() -> Table.parse("shop.csv", "a,b\n1,2\n\"1,2\n"))
                .isInstanceOf(BadRow.class)
                .hasMessageContaining("shop.csv, line 3");
    }
}
