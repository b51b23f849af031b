package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.binding.WireThicknesses;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.job.Clearances;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ListCommandTest {
    @Test
    void everyRowOfEveryTableIsListedWithItsSource() {
        Cli run = Cli.run("list");
        assertThat(run.exit()).as(run.err()).isZero();
        Catalogue c = Catalogue.builtIn();
        c.stocks().all().forEach(s -> assertThat(run.out()).contains("\n" + s.name() + " "));
        c.sizes().all().forEach(s -> assertThat(run.out()).contains("\n" + s.name() + " "));
        c.patterns().all().forEach(p -> assertThat(run.out()).contains("\n" + p.id() + " "));
        c.punches().all().forEach(p -> assertThat(run.out()).contains("\n" + p.id() + " "));
        Clearances.all().forEach(r -> assertThat(run.out()).contains("\n" + r.name() + " "));
        WireThicknesses.all().forEach(r -> assertThat(run.out()).contains("\n" + r.elements() + " "));
        // CIP4's line is to stand with its data
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Copyright (c) 2000-2020, International Cooperation for the Integration of Processes");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @Test
    void aRowOfATable() {
        // JCP O-63 (1999): 0.0037 in, 0.0003 in either way; 20 lb on 17 x 22 in is 75.2 g/m2 (PrintWiki)
        assertThat(Cli.run("list", "stocks").out())
                .contains("bond-20         paper  75.2     94 um      +-7.6 um   JCP O-63 (1999)\n")
                .doesNotContain("generic-");
    }

    @Test
    void aNameShowsEveryColumnOfItsRow() {
        Cli run = Cli.run("list", "w2_1i-square-0t");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).isEqualTo("""
                of the patterns
                id                W2_1i-square-0t
                method            wire
                pitch             2:1
                spacing           12.7 mm (1/2 in)
                hole              6.35 x 6.35 mm
                hole published    0.2-0.32 in
                centre            6.18 mm
                centre published  3 mm + d/2
                reference edge    Left
                count published   23 A4 / 21 Letter (F.10 text)
                elements          wire 2:1
                source            XJDF2.2 F.10
                """);
    }

    @Test
    void aNameInSeveralTablesOrGroupsIsShownInEach() {
        assertThat(Cli.run("list", "3/8 in").out()).contains("wire 3:1", "wire 2:1", "comb 9/16 in", "55 sheets");
        assertThat(Cli.run("list", "elements", "3/8 in").out()).contains("wire 3:1", "wire 2:1", "comb 9/16 in");
    }

    @Test
    void ownTablesAndPunchesAreListedToo(@TempDir Path folder) throws Exception {
        Cli option = Cli.run("list", "felt-200", "--tables", Cli.fixture("shop-stocks.csv"));
        assertThat(option.out().replaceAll("\\s+", "")).contains("owntable", "shop-stocks.csv,line3");
        Path job = folder.resolve("bind-prep.yaml");
        Files.copy(Path.of(Cli.fixture("shop-stocks.csv")), folder.resolve("own.csv"));
        Files.copy(Path.of(Cli.fixture("shop-punch.yaml")), folder.resolve("bench.yaml"));
        Files.writeString(job, "tables: own.csv\npunch: bench.yaml\n");
        Cli file = Cli.run("list", "--job", job.toString());
        assertThat(file.exit()).as(file.err()).isZero();
        assertThat(file.out()).contains("\nfelt-200 ", "\nbench-3-1 ");
        assertThat(file.out().replaceAll("\\s+", " ")).contains("own table own.csv, line 3");
        Cli punch = Cli.run("list", "bench-3-1", "--punch", Cli.fixture("shop-punch.yaml"));
        assertThat(punch.out())
                .contains("closer takes        3/16 in to 1/2 in\n", "pins that come out  1, 2, 33, 34\n");
    }

    @Test
    void whatWasMeasuredOfAPunchIsListed(@TempDir Path folder) throws Exception {
        Path bench = folder.resolve("bench.yaml");
        Files.writeString(
                bench,
                "pattern: W3_1i-square-0t\npins: 34\n"
                        + "measured: {skew: -0.2 mm +- 0.1 mm, side: 0.3 mm +- 0.1 mm}\n");
        assertThat(Cli.run("list", "bench", "--punch", bench.toString()).out())
                .contains("measured errors     side 0.3 mm +-0.1 mm; skew -0.2 mm +-0.1 mm\n");
        String json = Cli.run("list", "bench", "--punch", bench.toString(), "--format", "json")
                .out();
        assertThat(json.replaceAll("\\s", ""))
                .contains("\"measured\":{\"side\":{\"valueMm\":0.3,\"toleranceMm\":0.1},\"skew\":{\"valueMm\":-0.2,");
        assertThat(Cli.run("list", "generic-W3_1i-square-0t").out()).contains("measured errors     not measured\n");
    }

    @Test
    void clearancesAndWireThicknessesAreTablesToo() {
        // all common practice, no source, but for the coil's filament: Printing Impressions, Feb 2005
        assertThat(Cli.run("list", "clearances").out())
                .contains("usual  3.18 mm (1/8 in)   wire, coil, rings  common practice, no source\n");
        assertThat(Cli.run("list", "wire-thicknesses", "coil").out())
                .contains("wire thickness  2.16 mm\n", "Printing Impressions");
        assertThat(Cli.run("list", "clearances", "close", "--format", "json").out())
                .contains("\"allowanceMm\" : 2.3813", "\"builtInRuleOf\" : [ ]");
    }

    @Test
    void jsonHasTheTablesAskedFor() {
        assertThat(Cli.run("list", "bond-20", "--format", "json").out()).isEqualTo("""
                {
                  "schemaVersion" : 2,
                  "stocks" : [ {
                    "id" : "bond-20",
                    "kind" : "paper",
                    "grammageGsm" : 75.195,
                    "caliperUm" : 93.98,
                    "toleranceUm" : 7.62,
                    "source" : "JCP O-63 (1999)"
                  } ]
                }
                """);
        assertThat(Cli.run("list", "punches", "--format", "json").out())
                .contains("\"punches\" : [ {", "\"centreMm\" : 5.08", "\"pullablePins\" : null")
                .doesNotContain("\"stocks\"");
    }

    @Test
    void whatIsNotThereIsAnErrorThatSaysWhatIs() {
        Cli name = Cli.run("list", "stocks", "bond-21");
        assertThat(name.exit()).isEqualTo(2);
        assertThat(name.out()).isEmpty();
        assertThat(name.err()).contains("nothing is called \"bond-21\" in the stocks");
        assertThat(Cli.run("list", "papers", "bond-20").err())
                .contains("no table \"papers\"", "stocks, sizes, patterns");
        assertThat(Cli.run("list", "papers").err()).contains("nothing is called \"papers\"", "stocks, sizes, patterns");
        Cli tables = Cli.run("list", "--tables", Cli.fixture("password.txt"));
        assertThat(tables.exit()).isEqualTo(2);
        assertThat(tables.err()).startsWith("bind-prep: --tables: ").contains("columns of no table");
    }

    @Test
    void limitsAreATableThatAShopReplaces(@TempDir Path temp) throws Exception {
        assertThat(Cli.run("list", "limits").out()).contains("paper-outside-error", "punching-tolerance", "1 mm");
        Path own = Files.writeString(temp.resolve("own.csv"), "name,value,source\npunching-tolerance,0.4 mm,ours\n");
        assertThat(Cli.run("list", "limits", "punching-tolerance", "--tables", own.toString())
                        .out())
                .contains("0.4 mm", "ours");
        assertThat(Cli.run("plan", "--leaves", "20", "--trim", "a4", "--tables", own.toString(), "--format", "json")
                        .out())
                .contains("\"punchingToleranceMm\" : 0.4");
        assertThat(Cli.run("list", "limits", "--format", "json").out()).contains("\"depth-share\"");
    }
}
