package io.bindprep.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StockParserTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // arithmetic by ISO 534 (thickness = grammage x bulk) and 1 mil = 25.4 um
                "bond-20 | 93.98 | 7.62",
                "BOND-20 | 93.98 | 7.62",
                "80 gsm bulk 1.3 | 104 | 8.32",
                "80 g/m2, bulk 1.3 cm3/g | 104 | 8.32",
                "80 gsm 104 um | 104 | 8.32",
                "80gsm,104um | 104 | 8.32",
                "80 gsm, 0.104 mm | 104 | 8.32",
                "90 gsm 4.1 mil | 104.14 | 8.3312",
                "14 pt-caliper | 355.6 | 28.448",
                "14 mil | 355.6 | 28.448",
                "0.014 in board | 355.6 | 28.448",
                "20 lb 17x22 4 mil | 101.6 | 8.128",
                "20 lb 17 x 22 in, caliper 4 mil | 101.6 | 8.128",
                "bond-20; 25 sheets = 2.6 mm | 104 | 4",
                "80 gsm; 25 sheets = 2.6 mm | 104 | 4",
                "80 gsm 90 um; 200 sheets = 20.8 mm | 104 | 2.08",
                "80 gsm 104 um tolerance 5 % | 104 | 5.2",
                "80 gsm 104 um +-3um | 104 | 3",
                "bond-20 tolerance 2 % | 93.98 | 1.8796",
                "25 sheets = 1/8 in | 127 | 4",
                // labels of reams as printed name a row of the table; JCP O-63 (1999): 20 lb bond 0.0037 in
                "20 lb bond | 93.98 | 7.62",
                "20# Bond paper | 93.98 | 7.62",
                "20 lb copy paper; 25 sheets = 2,6 mm | 104 | 4",
                // decimal commas
                "80 gsm bulk 1,3 | 104 | 8.32",
                "80 g/m², bulk 1,3 | 104 | 8.32",
                "80 g/m2 0,104 mm | 104 | 8.32",
            })
    void readsEveryForm(String text, String caliperUm, String toleranceUm) throws Exception {
        Stock stock = new StockParser(Catalogue.builtIn().stocks()).parse("stock", text);
        assertThat(stock.caliperUm()).isEqualByComparingTo(caliperUm);
        assertThat(stock.toleranceUm()).isEqualByComparingTo(toleranceUm);
        assertThat(stock.source()).isNotBlank();
    }

    @Test
    void basisWeightWithBulk() throws Exception {
        Stock stock = new StockParser(Catalogue.builtIn().stocks()).parse("stock", "60 lb 25x38 in bulk 1.3");
        // 60 x 1.48014648 g/m2 (453.59237 / (500 x 25 x 38 x 0.0254^2)) x 1.3
        assertThat(stock.caliperUm().doubleValue()).isEqualTo(115.451425, org.assertj.core.api.Assertions.within(1e-5));
        assertThat(stock.kind()).isEqualTo(Stock.Kind.PAPER);
    }

    @Test
    void millimetresAndInchesAgreeExactly() throws Exception {
        // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)
        for (String[] pair : new String[][] {
            {"0.3556 mm", "14 mil"},
            {"0.3556 mm", "0.014 in"},
            {"355.6 um", "14 pt-caliper"},
            {"25 sheets = 3.175 mm", "25 sheets = 1/8 in"},
            {"0.03556 cm", "14 mils"}
        }) {
            assertThat(new StockParser(Catalogue.builtIn().stocks())
                            .parse("s", pair[0])
                            .caliperUm())
                    .isEqualByComparingTo(new StockParser(Catalogue.builtIn().stocks())
                            .parse("s", pair[1])
                            .caliperUm());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "bond-21",
                "80 gsm",
                "80",
                "20 lb",
                "14 pt",
                "80 gsm bulk",
                "bulk 1.3",
                "80 gsm bulk 1.3 104 um",
                "80 gsm 80 gsm 104 um",
                "80 gsm 20 lb 17x22 104 um",
                "bond-20 104 um",
                "bond-20 80 gsm",
                "80 gsm 104 m",
                "80 gsm 104",
                "104 um 5",
                "0 sheets = 2 mm",
                "80 gsm 0 um",
                "80 gsm 104 mm",
                "80 gsm 104 um tolerance 100 %",
                "80 gsm 104 um tolerance 0.2 mm",
                "20 lb 0x22 4 mil",
                "1/0 in",
                "bond-20 25 sheets",
                "bond-20x",
                "-14 mil",
                "80 gsm 104 um nonsense"
            })
    void refusesWhatIsNoThicknessAndShowsTheForms(String text) {
        SettingException e = catchThrowableOfType(
                SettingException.class,
                () -> new StockParser(Catalogue.builtIn().stocks()).parse("covers.front", text));
        assertThat(e).as(text).isNotNull();
        assertThat(e.key()).isEqualTo("covers.front");
        assertThat(e.known()).contains("bond-20", "coverboard-18");
        assertThat(e.remedy()).contains("80 gsm bulk 1.3", "25 sheets = 2.6 mm");
    }

    @Test
    void saysWhyAPointAndAWeightClassAreRefused() {
        assertThatThrownBy(() -> new StockParser(Catalogue.builtIn().stocks()).parse("stock", "14 pt"))
                .hasMessageContaining("pt-caliper");
        assertThatThrownBy(() -> new StockParser(Catalogue.builtIn().stocks()).parse("stock", "20 lb"))
                .hasMessageContaining("basis sheet");
        assertThatThrownBy(() -> new StockParser(Catalogue.builtIn().stocks()).parse("stock", "80 gsm"))
                .hasMessageContaining("not a thickness");
    }

    @Test
    void mapFormsReadLikeText() throws Exception {
        same(Map.of("name", "bond-20"), "bond-20");
        same(Map.of("grammage", 80, "bulk", 1.3), "80 gsm bulk 1.3");
        same(Map.of("grammage", "80 gsm", "bulk", "1.3"), "80 gsm bulk 1.3");
        same(Map.of("grammage", new BigDecimal("80"), "caliper", "104 um", "kind", "film"), "80 gsm 104 um film");
        same(Map.of("basis-weight", 20, "basis-sheet", "17x22", "caliper", "4 mil"), "20 lb 17x22 4 mil");
        same(Map.of("basis-weight", "60 lb", "basis-sheet", "25 x 38 in", "bulk", 1.3), "60 lb 25x38 in bulk 1.3");
        same(Map.of("name", "bond-20", "measured", "25 sheets = 2.6 mm"), "bond-20; 25 sheets = 2.6 mm");
        same(Map.of("caliper", "14 mil", "tolerance", "5 %"), "14 mil tolerance 5 %");
        assertThat(new StockParser(Catalogue.builtIn().stocks())
                        .parse("stock", Map.of("name", "our cream", "grammage", 80, "bulk", 1.3))
                        .name())
                .isEqualTo("our cream");
    }

    private static void same(Map<String, ?> map, String text) throws Exception {
        Stock a = new StockParser(Catalogue.builtIn().stocks()).parse("stock", map);
        Stock b = new StockParser(Catalogue.builtIn().stocks()).parse("stock", text);
        assertThat(a.caliperUm()).isEqualByComparingTo(b.caliperUm());
        assertThat(a.toleranceUm()).isEqualByComparingTo(b.toleranceUm());
        assertThat(a.grammage()).isEqualTo(b.grammage());
        assertThat(a.kind()).isEqualTo(b.kind());
    }

    @Test
    void aStockIsNamedAsTheJobNamesIt() throws Exception {
        StockParser parser = new StockParser(Catalogue.builtIn().stocks());
        Stock bond = Catalogue.builtIn().stocks().byId("bond-20").orElseThrow();
        // a name alone is the stock of the catalogue itself
        assertThat(parser.parse("stock", "BOND-20")).isEqualTo(bond);
        assertThat(parser.parse("stock", Map.of("name", "BOND-20"))).isEqualTo(bond);
        assertThat(parser.parse("stock", "BOND-20; 25 sheets = 2.6 mm").name())
                .isEqualTo("BOND-20; 25 sheets = 2.6 mm");
        assertThat(parser.parse("stock", Map.of("grammage", 80, "bulk", 1.3)).name())
                .isEqualTo("bulk 1.3; 80 gsm");
        // a pack alone makes a stock of any name: 2.6 mm over 25 sheets
        Stock own = parser.parse("stock", Map.of("name", "our cream", "measured", "25 sheets = 2.6 mm"));
        assertThat(own.name()).isEqualTo("our cream");
        assertThat(own.caliperUm()).isEqualByComparingTo("104");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "5 gsm 5 um",
                "3000 gsm 10 mm",
                "80 gsm bulk 0.3",
                "80 gsm bulk 5",
                "80 gsm 104 um tolerance 103.9 um"
            })
    void takesWhatIsAtTheLimits(String text) throws Exception {
        // 5 to 3000 g/m2, 0.3 to 5 cm3/g, 5 um to 10 mm, a tolerance below the caliper: our own limits, no source
        assertThat(new StockParser(Catalogue.builtIn().stocks())
                        .parse("stock", text)
                        .name())
                .isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4.99 gsm 5 um | grammage 4.99 g/m2 is outside 5 to 3000: mistaken unit?",
                "3001 gsm 1 mm | grammage 3001 g/m2 is outside 5 to 3000: mistaken unit?",
                "80 gsm bulk 0.29 | bulk 0.29 cm3/g is outside 0.3 to 5: mistaken unit?",
                "80 gsm bulk 5.1 | bulk 5.1 cm3/g is outside 0.3 to 5: mistaken unit?",
                "80 gsm 4.99 um | caliper 4.99 um is outside 5 to 10000: mistaken unit?",
                "80 gsm 10.001 mm | caliper 10001 um is outside 5 to 10000: mistaken unit?",
                "80 gsm 104 um tolerance 104 um | the tolerance is not less than the caliper of 104 um",
                "80 gsm 104 um tolerance 100 % | a tolerance of 100 % or more says nothing"
            })
    void saysWhatIsBeyondThem(String text, String why) {
        assertThatThrownBy(() -> new StockParser(Catalogue.builtIn().stocks()).parse("stock", text))
                .hasMessageContaining(why);
    }

    @Test
    void aMapSaysWhichOfItsKeysIsWrong() {
        StockParser parser = new StockParser(Catalogue.builtIn().stocks());
        SettingException name = catchThrowableOfType(
                SettingException.class, () -> parser.parse("stock", Map.of("name", "bond-21", "tolerance", "5 %")));
        assertThat(name.key()).isEqualTo("stock.name");
        assertThat(name).hasMessageContaining("\"bond-21\" is no stock known by name");
        assertThat(catchThrowableOfType(
                                SettingException.class,
                                () -> parser.parse("stock", Map.of("basis-weight", 20, "caliper", "4 mil")))
                        .key())
                .isEqualTo("stock.basis-sheet");
        assertThat(catchThrowableOfType(
                                SettingException.class,
                                () -> parser.parse("stock", Map.of("basis-sheet", "17x22", "caliper", "4 mil")))
                        .key())
                .isEqualTo("stock.basis-weight");
    }

    @Test
    void mapRefusesUnknownKeysAndValues() {
        SettingException e = catchThrowableOfType(
                SettingException.class,
                () -> new StockParser(Catalogue.builtIn().stocks()).parse("stock", Map.of("weight", 80)));
        assertThat(e.key()).isEqualTo("stock.weight");
        assertThat(e.known()).contains("grammage", "basis-sheet");
        for (Map<String, ?> map : List.<Map<String, ?>>of(
                Map.of(),
                Map.of("name", "bond-21"),
                Map.of("name", "bond-20", "caliper", "4 mil"),
                Map.of("grammage", 80),
                Map.of("grammage", "eighty", "bulk", 1),
                Map.of("caliper", 104),
                Map.of("basis-weight", 20, "caliper", "4 mil"),
                Map.of("grammage", 80, "caliper", "104 um", "kind", "cloth"))) {
            assertThatThrownBy(() -> new StockParser(Catalogue.builtIn().stocks()).parse("stock", map))
                    .as(map.toString())
                    .isInstanceOf(SettingException.class);
        }
    }

    @Test
    void readsTheSameInEveryLocale() throws Exception {
        Locale before = Locale.getDefault();
        try {
            Stock root = new StockParser(Catalogue.builtIn().stocks()).parse("s", "INDEX-90");
            for (String tag : List.of("de", "tr", "en")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(new StockParser(Catalogue.builtIn().stocks()).parse("s", "INDEX-90"))
                        .isEqualTo(root);
                assertThat(new StockParser(Catalogue.builtIn().stocks())
                                .parse("s", "0.014 IN FILM")
                                .kind())
                        .isEqualTo(Stock.Kind.FILM);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void thickerWithEveryLeaf() {
        // property, seed 534: any leaf makes min, nominal and max grow, and the order of leaves changes nothing
        Random random = new Random(534);
        List<Stock> all = Catalogue.builtIn().stocks().all();
        for (int run = 0; run < 200; run++) {
            List<Stock> stocks = new ArrayList<>();
            Stack before = StackEstimator.estimate(stocks, Length.ofMm(210), Length.ofMm(297));
            for (int i = 0; i < 8; i++) {
                stocks.add(all.get(random.nextInt(all.size())));
                Stack now = StackEstimator.estimate(stocks, Length.ofMm(210), Length.ofMm(297));
                assertThat(now.min()).isGreaterThan(before.min()).isLessThan(now.nominal());
                assertThat(now.nominal()).isGreaterThan(before.nominal()).isLessThan(now.max());
                assertThat(now.max()).isGreaterThan(before.max());
                before = now;
            }
            java.util.Collections.shuffle(stocks, random);
            Stack shuffled = StackEstimator.estimate(stocks, Length.ofMm(210), Length.ofMm(297));
            assertThat(shuffled.nominal()).isEqualTo(before.nominal());
            assertThat(shuffled.max()).isEqualTo(before.max());
        }
    }
}
