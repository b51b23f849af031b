package io.bindprep.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.problem.SettingException;
import io.bindprep.report.words.Sentences;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published conversions and worked examples; the source stands beside each. */
class PaperPublishedTest {
    private static Stock stock(String text) throws Exception {
        return new StockParser(Catalogue.builtIn().stocks()).parse("stock", text);
    }

    private static List<Stock> leaves(int count, Stock stock) {
        return new ArrayList<>(Collections.nCopies(count, stock));
    }

    private static Stack on(Length w, Length h, List<Stock> stocks) {
        return StackEstimator.estimate(stocks, w, h);
    }

    private static final Length LETTER_W = Length.ofInch(17, 2);
    private static final Length LETTER_H = Length.ofInch(11, 1);

    @ParameterizedTest
    @CsvSource({
        // W. B. Wheelwright, From Paper Mill to Pressroom (1920), bulk table: four sheets in 1/1000 in, pages per inch
        "8,1000",
        "8.5,941",
        "9,889",
        "9.5,842",
        "10,800",
        "12.5,640",
        "15.5,516",
        "16,500",
        "20,400",
        "24,333",
        "30,267"
    })
    void wheelwrightsBulkTable(String mils, int pagesPerInch) throws Exception {
        Stock measured = stock("4 sheets = " + mils + " mil");
        assertThat(Math.round(2 * 25_400 / measured.caliperUm().doubleValue())).isEqualTo(pagesPerInch);
    }

    @Test
    void vocationalCourseSpine() throws Exception {
        // mediencommunity.de, Druckkalkulation 3.1: 440 pages of 90 g/m2 at bulk 1.2, cover 250 g/m2 at bulk 1.0: 24.26
        // mm
        List<Stock> stocks = leaves(220, stock("90 gsm bulk 1.2"));
        stocks.addAll(leaves(2, stock("250 gsm bulk 1.0")));
        assertThat(on(LETTER_W, LETTER_H, stocks).nominal()).isEqualTo(Length.ofMm("24.26"));
    }

    @ParameterizedTest
    @CsvSource({
        // mediencommunity.de, Druckkalkulation 2.2: 80 g/m2 in mm
        "80 gsm bulk 0.75,60",
        "80 gsm bulk 1,80",
        "80 gsm bulk 2,160",
        // Wikipedia "Book paper": 80 g/m2 at 120 um is bulk 1.5, at 88 um 1.1
        "80 gsm bulk 1.5,120",
        "80 gsm bulk 1.1,88"
    })
    void thicknessIsGrammageTimesBulk(String text, String um) throws Exception {
        assertThat(stock(text).caliperUm()).isEqualByComparingTo(um);
    }

    @Test
    void bulkIsNotThicknessTimesWeight() throws Exception {
        // a published formula that is wrong, "bulk = thickness x basis weight x 1000": 120 um of 80 g/m2 would be bulk
        // 9600, Wikipedia "Book paper" has 1.5 here
        assertThatThrownBy(() -> stock("80 gsm bulk 9600"))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("mistaken unit");
        Stock book = stock("80 gsm 120 um");
        assertThat(book.caliperUm().doubleValue() / book.grammage().doubleValue())
                .isEqualTo(1.5);
    }

    @Test
    void antiqueBookPaper() throws Exception {
        // Roberts & Etherington (1982), "antique book paper": 60 lb, about 330 pages per inch: 154 um, bulk 1.73
        Stock antique = stock("60 lb 25x38 in bulk 1.73");
        assertThat(antique.caliperUm().doubleValue()).isCloseTo(154, within(0.5));
        assertThat(2 * 25_400 / antique.caliperUm().doubleValue()).isCloseTo(330, within(1.0));
    }

    @ParameterizedTest
    @CsvSource({
        // PrintWiki "Grammage": 3.760, 2.704, 1.627, 1.480 g/m2 per lb; half a unit of the last digit
        "17x22,3.760,0.0005",
        "20x26,2.704,0.0005",
        "24x36,1.627,0.0005",
        "25x38,1.480,0.0005",
        // CIP4 XJDF 2.2 Appendix B.1, two decimals
        "17x22,3.76,0.005",
        "20x26,2.70,0.005",
        "22.5x28.5,2.19,0.005",
        "24x36,1.63,0.005",
        "25x38,1.48,0.005",
        "25.5x30.5,1.81,0.005",
        // 453.59237 / (500 w h 0.0254^2) by the definitions of pound and inch
        "17x22,3.75973037,0.000000005",
        "20x26,2.70411377,0.000000005",
        "22.5x28.5,2.19280961,0.000000005",
        "24x36,1.62747588,0.000000005",
        "25x38,1.48014648,0.000000005",
        "25.5x30.5,1.80795777,0.000000005"
    })
    void gramsPerPound(String sheet, double perPound, double slack) throws Exception {
        Stock hundred = stock("100 lb " + sheet + " in 5 mil");
        assertThat(hundred.grammage().doubleValue() / 100).isCloseTo(perPound, within(slack));
        // XJDF's trade constant 1406.5 over the sheet's square inches, within 0.05 %
        String[] sides = sheet.split("x");
        double trade = 1406.5 / (Double.parseDouble(sides[0]) * Double.parseDouble(sides[1]));
        assertThat(hundred.grammage().doubleValue() / 100).isCloseTo(trade, within(trade * 0.0005));
    }

    @ParameterizedTest
    @CsvSource({
        // PrintWiki: 20 lb bond 75.2, 70 lb book 103.6
        "20 lb 17x22 4 mil,75.2,0.05",
        "70 lb 25x38 4 mil,103.6,0.05",
        // XJDF 2.2 App. B.1: 20# bond 75, 24# bond 90, 60# book 89, 80# cover 216, 110# index 199
        "20# 17x22 4 mil,75,0.5",
        "24# 17x22 4 mil,90,0.5",
        "60# 25x38 4 mil,89,0.5",
        "80# 20x26 9 mil,216,0.5",
        "110# 25.5x30.5 9 mil,199,0.5"
    })
    void publishedConversions(String text, double gsm, double slack) throws Exception {
        assertThat(stock(text).grammage().doubleValue()).isCloseTo(gsm, within(slack));
    }

    @Test
    void reamWeighsItsBasis() {
        // by the definition of basis weight: 500 sheets 17 x 22 of 20 lb are 2000 sheets Letter; 500 of those 5 lb =
        // 2.268 kg
        Stock bond = Catalogue.builtIn().stocks().byId("bond-20").orElseThrow();
        assertThat(on(LETTER_W, LETTER_H, leaves(500, bond)).weightG().doubleValue())
                .isCloseTo(2267.96185, within(1e-6));
        assertThat(on(LETTER_W, LETTER_H, leaves(1, bond)).weightG().doubleValue())
                .isCloseTo(4.536, within(0.0005));
    }

    @Test
    void fiftySheetsOfCopier() {
        // JCP O-63: 20 lb is 0.0037 +-0.0003 in, so 50 sheets are 0.185 in = 4.699 mm, 4.318 to 5.080 mm
        Stack stack = on(
                LETTER_W,
                LETTER_H,
                leaves(50, Catalogue.builtIn().stocks().byId("bond-20").orElseThrow()));
        assertThat(stack.nominal()).isEqualTo(Length.ofInch(185, 1000)).isEqualTo(Length.ofMm("4.699"));
        assertThat(stack.min()).isEqualTo(Length.ofMm("4.318"));
        assertThat(stack.max()).isEqualTo(Length.ofMm("5.080"));
    }

    @Test
    void hundredSheetsOfOffsetWithCovers() {
        // JCP A55 (60 lb 0.0047 +-0.0005 in) and L70 (10 pt 0.0100 +-0.0008 in): 0.490 in, 0.4384 to 0.5416 in
        List<Stock> stocks =
                leaves(100, Catalogue.builtIn().stocks().byId("offset-60").orElseThrow());
        stocks.addAll(leaves(2, Catalogue.builtIn().stocks().byId("c1s-10pt").orElseThrow()));
        Stack stack = on(LETTER_W, LETTER_H, stocks);
        assertThat(stack.nominal()).isEqualTo(Length.ofInch(490, 1000));
        assertThat(stack.min()).isEqualTo(Length.ofInch(4384, 10_000));
        assertThat(stack.max()).isEqualTo(Length.ofInch(5416, 10_000));
        assertThat(stack.weightG()).as("10 pt C1S has no published grammage").isNull();
        assertThat(String.join("\n", stack.because().stream().map(Sentences::of).toList()))
                .contains("JCP A55", "JCP L70", "no weight");
    }

    @ParameterizedTest
    @CsvSource({
        // exact grammage from the basis weight as the US Government Paper Specification Standards give it; inches
        "bond-20,75.195,0.0037,0.0003", "bond-24,90.234,0.0041,0.0003", "bond-28,105.272,0.0047,0.0003",
        "offset-50,74.007,0.0039,0.0005", "offset-60,88.809,0.0047,0.0005", "offset-70,103.610,0.0055,0.0005",
        "offset-80,118.412,0.0063,0.0005", "text-100,148.015,0.0079,0.0005", "index-90,162.716,0.0075,0.0005",
        "index-110,198.875,0.0091,0.0005", "index-140,253.114,0.0114,0.0005", "index-170,307.353,0.0138,0.0008",
        "tag-250,406.869,0.0180,0.0010", "newsprint-30,48.824,0.0032,0.0005", "film-75,111.011,0.0050,0.0005"
    })
    void jcpStocks(String id, double gsm, double caliperIn, double toleranceIn) {
        Stock stock = Catalogue.builtIn().stocks().byId(id).orElseThrow();
        assertThat(stock.grammage().doubleValue()).isCloseTo(gsm, within(0.0006));
        assertThat(stock.caliperUm().doubleValue()).isCloseTo(caliperIn * 25_400, within(1e-9));
        assertThat(stock.toleranceUm().doubleValue()).isCloseTo(toleranceIn * 25_400, within(1e-9));
        assertThat(stock.source()).startsWith("JCP");
    }

    @Test
    void coverBoards() {
        // JCP Q20, cover board for comb, wire and spiral: 0.018, 0.030, 0.048 in
        assertThat(List.of("coverboard-18", "coverboard-30", "coverboard-48")).allSatisfy(id -> {
            Stock board = Catalogue.builtIn().stocks().byId(id).orElseThrow();
            assertThat(board.kind()).isEqualTo(Stock.Kind.BOARD);
            assertThat(board.caliperUm().doubleValue() / 25.4)
                    .isCloseTo(Double.parseDouble(id.substring(11)), within(1e-9));
        });
    }

    @Test
    void everyStockHasASourceAndASoundTolerance() {
        assertThat(Catalogue.builtIn().stocks().all()).hasSizeGreaterThan(35).allSatisfy(s -> {
            assertThat(s.source()).isNotBlank();
            assertThat(s.toleranceUm()).isPositive().isLessThan(s.caliperUm());
        });
        assertThat(Catalogue.builtIn().stocks().ids()).doesNotHaveDuplicates();
    }
}
