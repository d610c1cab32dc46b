package org.bayledger.check;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Tells the contract which record a component's JSON stands for, where the component itself holds
 * the JSON as a tree or as text because it has to be kept as it is.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD})
public @interface JsonOf {

    /** The record. */
    Class<? extends Record> value();

    /** Whether it is written as a caller posted it, also in an answer. */
    boolean asPosted() default false;
}
