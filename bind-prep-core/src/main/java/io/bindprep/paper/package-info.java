/** Answers: how thick and how heavy is it? ISO 534 and ISO 536 terms; stocks from the US Government Paper Specification Standards. */
@NullMarked
package io.bindprep.paper;

import org.jspecify.annotations.NullMarked;
