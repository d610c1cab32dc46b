package org.bayledger.drawing;

import org.bayledger.review.ReviewDocument;
import org.jspecify.annotations.Nullable;

/**
 * What is to be taken off from which job.
 *
 * @param document the job
 * @param takeOff what is taken off; text/csv needs it, a workbook without it has all of them
 */
record TakeOffRequest(ReviewDocument document, @Nullable TakeOffKind takeOff) {}
