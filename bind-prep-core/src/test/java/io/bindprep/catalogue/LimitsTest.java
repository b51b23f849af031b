package io.bindprep.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.problem.SettingException;
import io.bindprep.table.NamedText;
import io.bindprep.table.OwnTables;
import io.bindprep.unit.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LimitsTest {
    private static Limits own(String rows) throws SettingException {
        return Catalogue.of(OwnTables.read(List.of(new NamedText("own.csv", "name,value,source\n" + rows))))
                .limits();
    }

    /** The published ones a second time: G. Markovits, Printing News; F. T. Carson, NBS RP69; ASME Y14.1. */
    @Test
    void publishedValues() {
        Limits limits = Catalogue.builtIn().limits();
        assertThat(limits.wireMargin("3:1").length()).isEqualTo(Length.ofInch(3, 8));
        assertThat(limits.wireMargin("2:1").length()).isEqualTo(Length.ofInch(1, 2));
        assertThat(limits.pack().length()).isEqualTo(Length.ofInch(1, 10));
        assertThat(limits.cut().length()).isEqualTo(Length.ofInch(1, 16));
        assertThat(limits.marginBeyondHoles().length()).isEqualTo(Length.ofInch(1, 4));
        assertThat(limits.usEdges()).contains(Length.ofInch(11, 1), Length.ofInch(17, 1));
        assertThat(limits.all()).allSatisfy(l -> assertThat(l.source()).isNotBlank());
    }

    @Test
    void aShopReplacesThem() throws Exception {
        Limits limits = own("punching-tolerance,0.5 mm,measured\nmargin-4:1,10 mm,the shop's own\nhanger-run,3,ours\n");
        assertThat(limits.punchingTolerance().length()).isEqualTo(Length.ofMm("0.5"));
        assertThat(limits.punchingTolerance().source()).startsWith("measured");
        assertThat(limits.wireMargin("4:1").length()).isEqualTo(Length.ofMm(10));
        assertThat(limits.hangerRun()).isEqualTo(3);
        assertThat(limits.pack()).isEqualTo(Catalogue.builtIn().limits().pack());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "paper-outside,1 mm,no such name",
                "pack,0.1,no unit",
                "pack,-1 mm,below nothing",
                "pack,3 m,beyond any",
                "depth-share,30 %,no share",
                "depth-share,2,above one",
                "hanger-run,0,none",
                "hanger-run,999,too many"
            })
    void aRowThatCannotBeIsNamed(String row) {
        assertThatThrownBy(() -> own(row + "\n"))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("own.csv");
    }
}
