/** Answers: how is a result put on disk, so that nobody ever finds half of it? */
@NullMarked
package io.bindprep.files;

import org.jspecify.annotations.NullMarked;
