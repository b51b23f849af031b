/** Many files: each checked on some thread, answers in order. */
@NullMarked
package io.bindprep.cli.batch;

import org.jspecify.annotations.NullMarked;
