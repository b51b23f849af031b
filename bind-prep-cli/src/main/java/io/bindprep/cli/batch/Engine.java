package io.bindprep.cli.batch;

import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;

/** The check itself, so that a test can put another in its place. */
@FunctionalInterface
public interface Engine {
    /** As {@link BindPrep#check}. */
    Report check(CheckRequest request) throws UnreadableInputException, SettingException;
}
