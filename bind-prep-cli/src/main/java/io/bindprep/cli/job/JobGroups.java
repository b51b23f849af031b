package io.bindprep.cli.job;

import java.util.List;

/** Groups of a job's keys in the help; one that is named nowhere comes last. */
enum JobGroups {
    BOOK(
            "The job, by the keys of a job file (default in brackets): the book",
            "copies",
            "sides",
            "binding-edge",
            "trim",
            "stock",
            "covers",
            "inserts",
            "tabs",
            "fold-outs",
            "rotated",
            "other-sizes"),
    BINDING(
            "The job: how it is punched and bound",
            "binding",
            "pitch",
            "punch",
            "depth",
            "binding-margin",
            "punching-tolerance",
            "clearance",
            "minimum-web",
            "hanger"),
    REST("The job: material, limits and tables");

    private final String heading;
    private final List<String> keys;

    JobGroups(String heading, String... keys) {
        this.heading = heading;
        this.keys = List.of(keys);
    }

    String heading() {
        return heading;
    }

    static JobGroups of(String key) {
        for (JobGroups group : values()) {
            if (group.keys.contains(key)) {
                return group;
            }
        }
        return REST;
    }
}
