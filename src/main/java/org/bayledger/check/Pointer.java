package org.bayledger.check;

/** JSON pointers (RFC 6901). */
public final class Pointer {

    private Pointer() {}

    /** The pointer to a property of the object at a pointer. */
    public static String child(String pointer, String name) {
        return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
    }

    /** The pointer to an element of the array at a pointer. */
    public static String child(String pointer, int index) {
        return pointer + "/" + index;
    }
}
