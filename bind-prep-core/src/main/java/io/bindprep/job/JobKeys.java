package io.bindprep.job;

import io.bindprep.setting.KeyDescription;
import java.util.List;

/** The keys of a job, spelt as in the job file. */
final class JobKeys {
    static final String COPIES = "copies";
    static final String SIDES = "sides";
    static final String BOUND_EDGE = "bound-edge";
    static final String TRIM = "trim";
    static final String STOCK = "stock";
    static final String COVERS = "covers";
    static final String INSERTS = "inserts";
    static final String TABS = "tabs";
    static final String FOLD_OUTS = "fold-outs";
    static final String TURNED = "turned";
    static final String OTHER_SIZES = "other-sizes";
    static final String BINDING = "binding";
    static final String PITCH = "pitch";
    static final String PUNCH = "punch";
    static final String DEPTH = "depth";
    static final String CLEAR_MARGIN = "clear-margin";
    static final String REGISTRATION = "registration";
    static final String CLEARANCE = "clearance";
    static final String LEAST_WEB = "least-web";
    static final String HANGER = "hanger";
    static final String OVERS = "overs";
    static final String PRESS_SHEET = "press-sheet";
    static final String IMAGE_PPI = "image-ppi";
    static final String BLEED = "bleed";
    static final String FAIL_ON = "fail-on";
    static final String TABLES = "tables";

    private JobKeys() {}

    /** Every key, in the order of the job file. */
    static List<String> all() {
        return JobKeyDescriptions.ALL.stream().map(KeyDescription::key).toList();
    }
}
