package org.bayledger.check;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.bayledger.quantity.Dimension;

/**
 * Says that a double of a request record, or each double of a list, is read from a quantity with a
 * unit and held in SI.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({
    ElementType.RECORD_COMPONENT,
    ElementType.FIELD,
    ElementType.METHOD,
    ElementType.PARAMETER
})
public @interface Measured {

    /** What the quantity measures. */
    Dimension value();

    /** Which signs are accepted. */
    Sign sign() default Sign.ANY;

    /** Least value accepted, in SI. */
    double min() default Double.NEGATIVE_INFINITY;

    /** Greatest value accepted, in SI. */
    double max() default Double.POSITIVE_INFINITY;

    /** The signs that a quantity may have. */
    enum Sign {
        /** Any. */
        ANY,
        /** Greater than zero. */
        POSITIVE,
        /** Zero or greater. */
        NOT_NEGATIVE,
        /** Zero or smaller. */
        NOT_POSITIVE
    }
}
