package io.bindprep.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.paper.SheetSize;
import io.bindprep.paper.SheetSizes;
import io.bindprep.paper.Stock;
import io.bindprep.paper.StockCatalog;
import io.bindprep.problem.SettingException;
import io.bindprep.table.NamedText;
import io.bindprep.table.OwnTables;
import io.bindprep.table.Table;
import io.bindprep.table.TableKind;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The shop's own rows over ours; every shop and every row here is invented. */
class CatalogueTest {
    private static final String STOCKS = "id,kind,caliper,tolerance,gsm,source\n";
    private static final String PUNCHES =
            "id,pattern,pins,guide,first_pin,capacity,pullable,longest_edge,minimum_web,source\n";
    private static final String PATTERNS = "id,method,row,shape,hole_along,hole_across,spacing,centre,elements\n";

    private static Catalogue with(String... tables) throws SettingException {
        List<NamedText> files = new ArrayList<>();
        for (String table : tables) {
            files.add(new NamedText("shop" + (files.size() + 1) + ".csv", table));
        }
        return Catalogue.of(OwnTables.read(files));
    }

    private static SettingException wrong(String... tables) {
        return catchThrowableOfType(SettingException.class, () -> with(tables));
    }

    @Test
    void anOwnRowIsAddedAndItsSourceSaysWhere() throws SettingException {
        Catalogue c = with("# measured in the paper store\n" + STOCKS + "felt-200,paper,310 um,12 um,200,our gauge\n");
        Stock felt = c.stocks().byId("FELT-200").orElseThrow();
        assertThat(felt.caliperUm()).isEqualByComparingTo("310");
        assertThat(felt.grammage()).isEqualByComparingTo("200");
        assertThat(felt.source()).isEqualTo("our gauge; own table shop1.csv, line 3");
        assertThat(c.stocks().all()).hasSize(Catalogue.builtIn().stocks().all().size() + 1);
        assertThat(c.stocks().byId("bond-20"))
                .isEqualTo(Catalogue.builtIn().stocks().byId("bond-20"));
    }

    @Test
    void anOwnRowOfTheSameIdReplacesOursInItsPlace() throws SettingException {
        Catalogue c = with(STOCKS + "Bond-20,paper,97 um,3 um,,\n");
        assertThat(c.stocks().all()).hasSameSizeAs(Catalogue.builtIn().stocks().all());
        Stock own = c.stocks().all().get(0);
        assertThat(own.name()).isEqualTo("Bond-20");
        assertThat(own.caliperUm()).isEqualByComparingTo("97");
        assertThat(own.grammage()).isNull();
        assertThat(own.source()).isEqualTo("own table shop1.csv, line 2");
    }

    @Test
    void ofSeveralFilesTheLaterOneWins() throws SettingException {
        Catalogue c = with(STOCKS + "x,paper,97 um,3 um,,\n", STOCKS + "x,board,500 um,3 um,,\n");
        assertThat(c.stocks().byId("x").orElseThrow().kind()).isEqualTo(Stock.Kind.BOARD);
        assertThat(c.stocks().byId("x").orElseThrow().source()).contains("shop2.csv");
    }

    @Test
    void sizesAreFoundByNameAndByMeasure() throws SettingException {
        Catalogue c = with("name,width,height,tolerance,source\nsquare,200 mm,200 mm,1 mm,\n");
        SheetSize square = c.sizes().parse("trim", "Square");
        assertThat(square.toleranceWidth()).isEqualTo(Length.ofMm(1));
        assertThat(c.sizes().nearest(Length.ofMm(200), Length.ofMm(201)).name()).isEqualTo("square");
        assertThat(c.sizes().nearest(Length.ofMm(200), Length.ofMm(201)).source())
                .isEqualTo("own table shop1.csv, line 2");
    }

    @Test
    void elementsOfAGroupStaySmallestFirst() throws SettingException {
        Catalogue c = with("elements,name,size\nwire 3:1,5/8 in,5/8 in\nwire 3:1,11/32 in,11/32 in\n");
        Pattern pattern = c.patterns().byId("W3_1i-square-0t").orElseThrow();
        assertThat(c.elements().of(pattern).stream().map(e -> e.element().name()))
                .containsExactly(
                        "3/16 in", "1/4 in", "5/16 in", "11/32 in", "3/8 in", "7/16 in", "1/2 in", "9/16 in", "5/8 in");
        assertThat(c.elements().of(pattern).get(8).element().source()).isEqualTo("own table shop1.csv, line 2");
    }

    @Test
    void anOwnPatternHasAGenericPunchAndAnOwnPunchMayCutIt() throws SettingException {
        Catalogue c = with(
                PATTERNS + "X8,coil,repeat,round,4 mm,4 mm,8 mm,3 mm + 1/8 in,coil\n",
                PUNCHES + "bench,X8,20,fixed,5 mm,2 mm,1-2 20,330 mm,3 mm,\n");
        Pattern own = c.patterns().find(Method.COIL, "x8").orElseThrow();
        assertThat(own.centre()).isEqualTo(Length.ofMm("6.175"));
        // 17 in is 431.8 mm: 53 pitches of 8 mm
        assertThat(c.punches().generic(own).pins()).isEqualTo(54);
        Punch bench = c.punches().byId("bench").orElseThrow();
        assertThat(bench.firstPin()).isEqualTo(Length.ofMm(5));
        assertThat(bench.pullable()).containsExactly(1, 2, 20);
        assertThat(bench.depths())
                .hasSize(1)
                .first()
                .satisfies(d -> assertThat(d.centre()).isEqualTo(own.centre()));
    }

    @Test
    void ownDepthSettingsStandForAllThatAPunchHas() throws SettingException {
        Catalogue c = with("punch,name,centre,source\nGENERIC-W3_1i-square-0t,2,5 mm,dial\n"
                + "generic-W3_1i-square-0t,1,4 mm,dial\n");
        assertThat(c.punches().byId("generic-W3_1i-square-0t").orElseThrow().depths())
                .extracting(DepthSetting::name, DepthSetting::source)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("1", "dial; own table shop1.csv, line 3"),
                        org.assertj.core.groups.Tuple.tuple("2", "dial; own table shop1.csv, line 2"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x,leather,97 um,3 um,,|column kind: \"leather\"|paper",
                "x,paper,97,3 um,,|column caliper: |",
                "x,paper,97 mm,3 um,,|column caliper: \"97 mm\": is outside|",
                "x,paper,97 um,1 mm,,|column tolerance: \"1 mm\": is not less|",
                "x,paper,97 um,3 um,heavy,|column gsm: \"heavy\": is not a weight|",
                "80 gsm,paper,97 um,3 um,,|column id: \"80 gsm\"|",
                ",paper,97 um,3 um,,|column id: \"\": is empty|",
                "x,paper,97 um|3 cells for 6 columns|source"
            })
    void aWrongStockNamesFileLineColumnAndValue(String row, String said, String known) {
        SettingException e = wrong(STOCKS + "fine,paper,97 um,3 um,80,\n" + row + "\n");
        assertThat(e.key()).isEqualTo("tables");
        assertThat(e).hasMessageContaining("shop1.csv, line 3").hasMessageContaining(said);
        if (known != null) {
            assertThat(e.known()).contains(known);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "x,W9,40,movable,,2 mm,all,14 in,3 mm,s",
                "x,R3i-US,4,movable,,2 mm,all,14 in,3 mm,s",
                "x,W3_1i-square-0t,40,loose,,2 mm,all,14 in,3 mm,s",
                "x,W3_1i-square-0t,40,fixed,,2 mm,all,14 in,3 mm,s",
                "x,W3_1i-square-0t,40,movable,5 mm,2 mm,all,14 in,3 mm,s",
                "x,W3_1i-square-0t,40,movable,,2 mm,1-99999999,14 in,3 mm,s",
                "x,W3_1i-square-0t,40,movable,,2 mm,9-3,14 in,3 mm,s",
                "x,W3_1i-square-0t,40,movable,,2 mm,41,14 in,3 mm,s",
                "x,W3_1i-square-0t,40,movable,,2 mm,0,14 in,3 mm,s",
                "x,W3_1i-square-0t,0,movable,,2 mm,all,1 in,3 mm,s",
                "x,W3_1i-square-0t,many,movable,,2 mm,all,1 in,3 mm,s",
                "x,W3_1i-square-0t,40,movable,,2,all,1 in,3 mm,s",
                "x.yaml,W3_1i-square-0t,40,movable,,2 mm,all,1 in,3 mm,s",
                "x"
            })
    void aWrongPunchNamesItsLine(String row) {
        assertThat(wrong(PUNCHES + row)).hasMessageContaining("shop1.csv, line 2");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "x,glue,repeat,round,4 mm,4 mm,8 mm,3 mm,coil",
                "x,coil,often,round,4 mm,4 mm,8 mm,3 mm,coil",
                "x,coil,repeat,oval,4 mm,4 mm,8 mm,3 mm,coil",
                "x,coil,repeat,round,0 mm,4 mm,8 mm,3 mm,coil",
                "x,coil,repeat,round,4 mm,4 mm,8 8 mm,3 mm,coil",
                "x,coil,repeat,round,4 mm,4 mm,8,3 mm,coil",
                "x,coil,fixed,round,4 mm,4 mm,8  8 mm,3 mm,coil",
                "x,coil,repeat,round,4 mm,4 mm,8 mm,3 mm +,coil"
            })
    void aWrongPatternNamesItsLine(String row) {
        assertThat(wrong(PATTERNS + row)).hasMessageContaining("shop1.csv, line 2, column ");
    }

    @Test
    void anIdTwiceInOneFileAndASettingOfNoPunchAreWrong() {
        assertThat(wrong(STOCKS + "x,paper,97 um,3 um,,\nX,paper,98 um,3 um,,\n"))
                .hasMessageContaining("line 3")
                .hasMessageContaining("stands in line 2 already");
        SettingException e = wrong("punch,name,centre\nnone-such,1,5 mm\n");
        assertThat(e).hasMessageContaining("line 2, column punch: \"none-such\"");
        assertThat(e.known()).contains("generic-W3_1i-square-0t");
    }

    @Test
    void aTableOfNoKindIsToldWhatItWasTakenFor() {
        SettingException e = wrong("id,kind,caliper,tolerence\n");
        assertThat(e)
                .hasMessageContaining("\"shop1.csv\"")
                .hasMessageContaining("taken for stocks, it lacks tolerance, has besides tolerence");
        assertThat(e.known())
                .hasSize(TableKind.values().length)
                .contains("depths: punch name centre from_stack source");
        assertThat(wrong("")).hasMessageContaining("has no line of column names");
        assertThat(wrong("%PDF-1.7\n")).hasMessage("\"shop1.csv\" has the columns of no table");
    }

    @Test
    void tooMuchIsRefused() {
        assertThat(wrong("x".repeat(1_000_001))).hasMessageContaining("longer than 1000000 characters");
        assertThat(wrong(STOCKS + "x,paper," + "9".repeat(600) + ",3 um,,\n")).hasMessageContaining("line 2");
        StringBuilder rows = new StringBuilder(STOCKS);
        for (int i = 0; i < 5001; i++) {
            rows.append('s').append(i).append(",paper,97 um,3 um,,\n");
        }
        assertThat(wrong(rows.toString())).hasMessageContaining("more than 5000 rows");
    }

    @Test
    void ourTablesHaveTheColumnsOfTheirKindAndASourceInEveryRow() {
        check(TableKind.STOCKS, Table.beside(StockCatalog.class, "stocks.csv"));
        check(TableKind.SIZES, Table.beside(SheetSizes.class, "sizes.csv"));
        check(TableKind.PATTERNS, Table.beside(Catalogue.class, "patterns.csv"));
        check(TableKind.ELEMENTS, Table.beside(Catalogue.class, "elements.csv"));
        check(TableKind.PUNCHES, Table.beside(Catalogue.class, "punches.csv"));
        check(TableKind.DEPTHS, Table.beside(Catalogue.class, "depths.csv"));
    }

    private static void check(TableKind kind, Table table) {
        assertThat(table.columns()).containsExactlyInAnyOrderElementsOf(kind.columns());
        assertThat(table.rows())
                .isNotEmpty()
                .allSatisfy(r -> assertThat(r.source()).isNotEmpty());
    }

    /** Capacities are published for the inch sizes alone (Wikipedia, "Comb binding"); a size in mm promises no more. */
    @Test
    void aCombInMillimetresTakesWhatTheNextSmallerPublishedOneDoes() {
        List<Elements.Entry> published = combs("comb 9/16 in");
        List<Elements.Entry> metric = combs("comb 12 mm");
        assertThat(metric).hasSizeGreaterThan(10);
        for (Elements.Entry entry : metric) {
            Integer most = published.stream()
                    .filter(p -> p.element().size().compareTo(entry.element().size()) <= 0)
                    .map(Elements.Entry::sheets)
                    .reduce((a, b) -> b)
                    .orElseThrow();
            assertThat(entry.sheets()).as(entry.element().name()).isEqualTo(most);
        }
    }

    private static List<Elements.Entry> combs(String group) {
        return Catalogue.builtIn().elements().all().stream()
                .filter(e -> e.group().equals(group))
                .toList();
    }
}
