package io.bindprep.request;

import io.bindprep.job.Job;

/**
 * Request for a plan without a document.
 *
 * @param name how reports call the job
 * @param job must name its trim, for no page tells it
 */
public record PlanRequest(String name, Job job, Pile pile) {}
