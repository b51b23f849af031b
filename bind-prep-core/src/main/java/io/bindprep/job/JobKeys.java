package io.bindprep.job;

import io.bindprep.setting.KeyDescription;
import java.util.List;

/** The keys of a job, spelt as in the job file. */
final class JobKeys {
    static final String COPIES = "copies";
    static final String SIDES = "sides";
    static final String BINDING_EDGE = "binding-edge";
    static final String TRIM = "trim";
    static final String STOCK = "stock";
    static final String COVERS = "covers";
    static final String INSERTS = "inserts";
    static final String TABS = "tabs";
    static final String FOLD_OUTS = "fold-outs";
    static final String ROTATED = "rotated";
    static final String OTHER_SIZES = "other-sizes";
    static final String BINDING = "binding";
    static final String PITCH = "pitch";
    static final String PUNCH = "punch";
    static final String DEPTH = "depth";
    static final String BINDING_MARGIN = "binding-margin";
    static final String PUNCHING_TOLERANCE = "punching-tolerance";
    static final String CLEARANCE = "clearance";
    static final String MINIMUM_WEB = "minimum-web";
    static final String HANGER = "hanger";
    static final String OVERS = "overs";
    static final String PRESS_SHEET = "press-sheet";
    static final String IMAGE_PPI = "image-ppi";
    static final String BLEED = "bleed";
    static final String FAIL_ON = "fail-on";
    static final String ACCEPT = "accept";
    static final String UNITS = "units";
    static final String JOB_NUMBER = "job-number";
    static final String CUSTOMER = "customer";
    static final String DUE = "due";
    static final String TABLES = "tables";

    private JobKeys() {}

    /** Every key, in the order of the job file. */
    static List<String> all() {
        return JobKeyDescriptions.ALL.stream().map(KeyDescription::key).toList();
    }
}
