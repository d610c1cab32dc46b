package org.bayledger.architecture.planted.review;

/** Breaks a rule on purpose. */
public class BreachXml {

    Object write() {
        return javax.xml.stream.XMLOutputFactory.newDefaultFactory();
    }
}
