/**
 * What the engine uses of {@code java.time}, in small, for its script alone: the same names, but
 * for the T, and the same answers as the JDK's classes, to which a test compares them. The whole
 * classes bring every field and unit a calendar may have, a twentieth of the script.
 *
 * <p>The package and the T are how the compiler to JavaScript finds a class in place of the JDK's;
 * on the JVM the engine keeps the JDK's own.
 */
package org.teavm.classlib.java.time;
