/** The facade: a request in, a report out. */
@NullMarked
package io.bindprep;

import org.jspecify.annotations.NullMarked;
