package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.problem.SettingException;
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
    void aTableThatNobodyReadIsNotPassedOver() throws Exception {
        JobSettings settings = JobSettings.of(Map.of("tables", "shop.csv"));
        assertThat(catchThrowableOfType(SettingException.class, () -> JobReader.toJob(settings)))
                .hasMessageContaining("was not read");
    }
}
