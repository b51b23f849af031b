package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JobFilesTest {
    private static final String STOCKS = "id,kind,caliper,tolerance,source\n";

    @Test
    void anOwnStockIsReadByNameInEveryPlaceOfTheJob() throws Exception {
        JobSettings settings = JobSettings.read("""
                tables: [shop.csv]
                stock: felt
                covers: {front: felt}
                inserts: 3-4 on felt
                """, "job.yaml");
        List<String> opened = new ArrayList<>();
        JobFiles files = JobFiles.read(settings, (file, beside) -> {
            opened.add(file + " " + beside);
            return STOCKS + "felt,paper,310 um,12 um,our gauge\n";
        });
        Job job = JobReader.toJob(settings, files);
        assertThat(opened).containsExactly("shop.csv true");
        assertThat(job.stock().source()).isEqualTo("our gauge; own table shop.csv, line 2");
        assertThat(job.frontCover().stock()).isEqualTo(job.stock());
        assertThat(job.inserts().get(0).stock()).isEqualTo(job.stock());
    }

    @Test
    void whatNoJobFileNamesIsNotBesideIt() throws Exception {
        JobSettings settings = JobSettings.of(Map.of("tables", "a.csv; b.csv"));
        List<String> opened = new ArrayList<>();
        JobFiles.read(settings, (file, beside) -> {
            opened.add(file + " " + beside);
            return "";
        });
        assertThat(opened).containsExactly("a.csv false", "b.csv false");
    }

    @Test
    void aFileThatCannotBeReadSaysWhy() throws Exception {
        assertThat(failing(new NoSuchFileException("x")))
                .hasMessageContaining("\"shop.csv\" cannot be read: there is no");
        assertThat(failing(new AccessDeniedException("x"))).hasMessageContaining("refuses access");
        assertThat(failing(new MalformedInputException(1))).hasMessageContaining("not text in UTF-8");
        assertThat(failing(new FileSystemException("x", null, "it is larger than 4 MB")))
                .hasMessageContaining("4 MB");
        assertThat(failing(new IOException("x"))).hasMessageContaining("does not give it");
    }

    private static SettingException failing(IOException why) throws SettingException {
        JobSettings settings = JobSettings.of(Map.of("tables", "shop.csv"));
        return catchThrowableOfType(
                SettingException.class,
                () -> JobFiles.read(settings, (file, beside) -> {
                    throw why;
                }));
    }

    @Test
    void aWrongRowIsToldWithItsPlaceInTheTableAndInTheJob() throws Exception {
        JobSettings settings = JobSettings.read("sides: two\ntables: shop.csv\n", "job.yaml");
        JobFiles files = JobFiles.read(settings, (file, beside) -> STOCKS + "felt,wool,310 um,12 um,\n");
        SettingException e = catchThrowableOfType(SettingException.class, () -> JobReader.toJob(settings, files));
        assertThat(e).hasMessage("shop.csv, line 2, column kind: \"wool\" is not known (job.yaml, line 2, column 9)");
        assertThat(e.known()).containsExactly("paper", "board", "film");
    }

    @Test
    void aPunchFileIsReadOverTheShopsOwnPatterns() throws Exception {
        JobSettings settings = JobSettings.read("""
                tables: shop.csv
                punch: bench.yaml
                binding: coil
                """, "job.yaml");
        JobFiles files = JobFiles.read(
                settings,
                (file, beside) -> file.equals("bench.yaml")
                        ? "pattern: X8\npins: 20\npunching-tolerance: 0.4 mm\n"
                        : "id,method,row,shape,hole_along,hole_across,spacing,centre,elements\n"
                                + "X8,coil,repeat,round,4 mm,4 mm,8 mm,5 mm,coil\n");
        Job job = JobReader.toJob(settings, files);
        assertThat(job.punch()).isEqualTo("bench");
        assertThat(job.catalogue().punches().byId("bench").orElseThrow().pattern())
                .isEqualTo("X8");
        // the plan takes the punch's own measured punching tolerance, unless the job says another
        assertThat(job.punchingTolerance()).isNull();
        assertThat(job.catalogue().punches().byId("bench").orElseThrow().punchingTolerance())
                .isEqualTo(Length.ofMm("0.4"));
        assertThat(JobReader.toJob(settings.with("punching-tolerance", "2 mm"), files)
                        .punchingTolerance())
                .isEqualTo(Length.ofMm(2));
    }

    @Test
    void aWrongPunchFileIsToldWithBothPlaces() throws Exception {
        JobSettings settings = JobSettings.read("punch: bench.yaml\n", "job.yaml");
        JobFiles files = JobFiles.read(settings, (file, beside) -> "pattern: W3_1i-square-0t\npins: lots\n");
        SettingException e = catchThrowableOfType(SettingException.class, () -> JobReader.toJob(settings, files));
        assertThat(e.key()).isEqualTo("punch");
        assertThat(e)
                .hasMessage("pins: \"lots\" is not a whole number (bench.yaml, line 2, column 7)"
                        + " (job.yaml, line 1, column 8)");
        assertThat(catchThrowableOfType(SettingException.class, () -> JobReader.toJob(settings)))
                .hasMessageContaining("\"bench.yaml\" was not read");
    }

    @Test
    void aTableThatNobodyReadIsNotPassedOver() throws Exception {
        JobSettings settings = JobSettings.of(Map.of("tables", "shop.csv"));
        assertThat(catchThrowableOfType(SettingException.class, () -> JobReader.toJob(settings)))
                .hasMessageContaining("was not read");
    }
}
