package org.bayledger.architecture.planted.drawing;

/** Breaks a rule on purpose. */
public class BreachParser {

    Object read() {
        return javax.xml.parsers.DocumentBuilderFactory.newDefaultInstance();
    }
}
