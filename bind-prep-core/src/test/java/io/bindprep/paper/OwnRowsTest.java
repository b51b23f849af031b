package io.bindprep.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.problem.SettingException;
import io.bindprep.table.NamedText;
import io.bindprep.table.OwnTables;
import io.bindprep.unit.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shop's own stocks and sizes at the limits of what a row may say; the limits are our own, no source. */
class OwnRowsTest {
    private static OwnTables own(String columns, String row) throws SettingException {
        return OwnTables.read(List.of(new NamedText("shop.csv", columns + "\n" + row + "\n")));
    }

    private static Stock stock(String row) throws SettingException {
        return StockCatalog.of(own("id,kind,caliper,tolerance,basis_in,basis_lb,gsm,source", row))
                .byId("x")
                .orElseThrow();
    }

    private static SheetSize size(String row) throws SettingException {
        return SheetSizes.of(own("name,width,height,tolerance,source", row))
                .byName("x")
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"5 um,4.9 um", "10 mm,1 um", "0.2 mil,5 um"})
    void aStockAtTheLimits(String caliper, String tolerance) throws Exception {
        // 0.2 mil is 5.08 um by the inch of 25.4 mm
        Stock stock = stock("x,film," + caliper + "," + tolerance + ",,,,");
        assertThat(stock.caliperUm()).isEqualByComparingTo(Thickness.micrometres(caliper));
        assertThat(stock.toleranceUm()).isEqualByComparingTo(Thickness.micrometres(tolerance));
        assertThat(stock.kind()).isEqualTo(Stock.Kind.FILM);
        assertThat(stock.grammage()).isNull();
    }

    @ParameterizedTest
    @CsvSource({
        "'x,paper,4.9 um,1 um,,,,',caliper: \"4.9 um\": is outside 5 um to 10 mm",
        "'x,paper,10.001 mm,1 um,,,,',caliper: \"10.001 mm\": is outside 5 um to 10 mm",
        "'x,paper,100 um,100 um,,,,',tolerance: \"100 um\": is not less than the caliper",
        "'x,paper,100 um,5 um,17x22,,,',basis_lb: \"\": is not a weight in pounds",
        "'x,paper,100 um,5 um,,20,,',basis_in: \"\": is not a basis sheet",
        "'x,paper,100 um,5 um,17 by 22,20,,',basis_in: \"17 by 22\": is not a basis sheet",
        "'x,paper,100 um,5 um,17x22,0.0,,',basis_lb: \"0.0\": is not a weight in pounds",
        "'x,paper,100 um,5 um,,,0,',gsm: \"0\": is not a weight in g/m2",
        "'x,paper,100 um,5 um,,,12345,',gsm: \"12345\": is not a weight in g/m2",
        "'80x,paper,100 um,5 um,,,,',id: \"80x\": is a name"
    })
    void aStockBeyondThemNamesTheColumn(String row, String said) {
        assertThatThrownBy(() -> stock(row))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining(said);
    }

    @Test
    void aStocksGrammageByItsBasisOrItself() throws Exception {
        // PrintWiki "Grammage": 17x22 in is 3.760 g/m2 per lb, so 20 lb are 75.2
        assertThat(stock("x,paper,100 um,5 um,17x22,20,,").grammage().doubleValue())
                .isCloseTo(75.2, within(0.05));
        assertThat(stock("x,paper,100 um,5 um,,,90.5,").grammage()).isEqualByComparingTo("90.5");
        // with both the basis weight goes first, as it does in our own table
        assertThat(stock("x,paper,100 um,5 um,17x22,20,90,").grammage().doubleValue())
                .isCloseTo(75.2, within(0.05));
    }

    @ParameterizedTest
    @CsvSource({
        // ISO 216:2007, 7.1: 1.5 mm up to 150 mm, 2 mm above 150 to 600 mm, 3 mm above
        "100 mm,150 mm,1.5,1.5",
        "150.01 mm,600 mm,2,2",
        "600 mm,600.01 mm,2,3",
        "150 mm,3000 mm,1.5,3",
        "0.125 in,3000 mm,1.5,3"
    })
    void aSizeByIsosTolerance(String width, String height, String across, String up) throws Exception {
        SheetSize size = size("x," + width + "," + height + ",ISO 216,ours");
        assertThat(size.width()).isEqualTo(Length.parse(width));
        assertThat(size.height()).isEqualTo(Length.parse(height));
        assertThat(size.toleranceWidth()).isEqualTo(Length.ofMm(across));
        assertThat(size.toleranceHeight()).isEqualTo(Length.ofMm(up));
        assertThat(size.source()).isEqualTo("ours; own table shop.csv, line 2; tolerance ISO 216:2007, 7.1");
    }

    @Test
    void aSizeByItsOwnTolerance() throws Exception {
        SheetSize square = size("x,200 mm,200 mm,199.99 mm,");
        assertThat(square.toleranceWidth()).isEqualTo(Length.ofMm("199.99")).isEqualTo(square.toleranceHeight());
        assertThat(square.source()).isEqualTo("own table shop.csv, line 2");
    }

    @ParameterizedTest
    @CsvSource({
        "'x,3.17 mm,200 mm,ISO 216,',width: \"3.17 mm\": is outside 3.18 mm to 3000 mm",
        "'x,200 mm,3000.01 mm,ISO 216,',height: \"3000.01 mm\": is outside 3.18 mm to 3000 mm",
        "'x,200.01 mm,200 mm,ISO 216,',width: \"200.01 mm\": is more than the height",
        "'x,200 mm,210 mm,200 mm,',tolerance: \"200 mm\": is not less than the width",
        "'4x,200 mm,210 mm,1 mm,',name: \"4x\": is a name",
        "'x landscape,200 mm,210 mm,1 mm,',name: \"x landscape\": is a name"
    })
    void aSizeBeyondTheLimitsNamesTheColumn(String row, String said) {
        assertThatThrownBy(() -> size(row)).isInstanceOf(SettingException.class).hasMessageContaining(said);
    }

    @Test
    void ourTablesSayWhereTheirNumbersComeFromAndHoldOurSizesOnce() throws Exception {
        assertThat(StockCatalog.notes().get(0)).contains("Joint Committee on Printing");
        assertThat(SheetSizes.notes().get(0)).contains("ISO 216:2007");
        List<SheetSize> all = SheetSizes.of(OwnTables.NONE).all();
        assertThat(all)
                .extracting(SheetSize::name)
                .contains("A4", "letter", "SRA3")
                .doesNotHaveDuplicates();
        // ours by a guide say so, a shop's own row does not
        assertThat(all)
                .filteredOn(s -> s.name().equals("letter"))
                .extracting(SheetSize::source)
                .singleElement()
                .asString()
                .isEqualTo("ASME Y14.1 size A; tolerance: a college print shop's guide");
        assertThat(all)
                .filteredOn(s -> s.name().equals("A4"))
                .extracting(SheetSize::source)
                .singleElement()
                .asString()
                .isEqualTo("ISO 216:2007; tolerance ISO 216:2007, 7.1");
    }
}
