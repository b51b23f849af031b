/** Files handed out beside the command: manual pages and completion. */
@NullMarked
package io.bindprep.cli.share;

import org.jspecify.annotations.NullMarked;
