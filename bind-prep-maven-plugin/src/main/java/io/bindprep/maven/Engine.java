package io.bindprep.maven;

import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;

/** The check itself, so that a goal is tested without a PDF. */
@FunctionalInterface
interface Engine {
    /** As {@link io.bindprep.BindPrep#check}. */
    Report check(CheckRequest request) throws UnreadableInputException, SettingException;
}
