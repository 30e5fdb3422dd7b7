package org.teavm.classlib.java.time.chrono;

/** A moment of any calendar; there is but one here. */
public interface TChronoLocalDateTime {}
