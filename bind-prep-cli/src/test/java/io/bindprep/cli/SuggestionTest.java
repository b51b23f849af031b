package io.bindprep.cli;

import static io.bindprep.cli.Cli.fixture;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SuggestionTest {
    private static final String BOOK = fixture("members-handbook-a4.pdf");

    @ParameterizedTest
    @CsvSource({
        "chek, bind-prep check",
        "liist, bind-prep list",
        "--versoin, --version",
        "check --binding-egde left, --binding-edge",
        "check --stok=bond-20, --stock",
        "check --format jsom, json",
        "check --formatt json, --format",
        "spec --paper leter, letter"
    })
    void aSlipGetsWhatWasMeant(String typed, String meant) {
        Cli run = Cli.run((typed + " " + BOOK).split(" "));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("Did you mean: " + meant + System.lineSeparator());
    }

    @ParameterizedTest
    @CsvSource({
        "check --stock bomd-20, bond-20",
        "check --sides tow, two",
        "check --binding wier, wire",
        "check --punch generic-W3_1i-sqare-0t, generic-W3_1i-square-0t",
        "list stokcs, stocks",
        "list bomd-20, bond-20",
        "init --punch --like generic-W3_1i-sqare-0t, generic-W3_1i-square-0t"
    })
    void aSlipInANameGetsTheNearestOne(String typed, String meant) {
        Cli run = Cli.run((typed.startsWith("check") ? typed + " " + BOOK : typed).split(" "));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).containsPattern("(?:Did you mean:?|nearest in the table:) \"?" + meant + "\"?");
    }

    @Test
    void whatIsNearNothingGetsNoGuess() {
        assertThat(Cli.run("check", "--frobnicate", BOOK).err()).doesNotContain("Did you mean");
        assertThat(Cli.run("check", "-x", BOOK).err()).doesNotContain("Did you mean");
        assertThat(Cli.run("frobnicate", BOOK).err()).doesNotContain("Did you mean");
    }
}
