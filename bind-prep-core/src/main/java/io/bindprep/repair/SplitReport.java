package io.bindprep.repair;

import io.bindprep.check.Report;
import java.util.List;
import java.util.Set;

/**
 * Result of writing a document as volumes.
 *
 * @param before the whole document
 * @param volumes what was written, in order; empty where nothing was
 * @param notes what to know of the files that were written
 * @param refusals why no file was written, in words; empty where they were
 * @param reasons the same for a machine; empty where files were written
 */
public record SplitReport(
        Report before,
        List<WrittenVolume> volumes,
        List<String> notes,
        List<String> refusals,
        Set<RefusalReason> reasons) {
    /**
     * One volume.
     *
     * @param pages of the whole document, ascending
     * @param bookmark the title of the bookmark that it begins with; empty where it begins with none. Hostile text
     * @param made what became of it, with its output and its checks
     */
    public record WrittenVolume(List<Integer> pages, String bookmark, ShiftReport made) {
        public WrittenVolume {
            pages = List.copyOf(pages);
        }
    }

    public SplitReport {
        volumes = List.copyOf(volumes);
        notes = List.copyOf(notes);
        refusals = List.copyOf(refusals);
        reasons = Set.copyOf(reasons);
    }
}
