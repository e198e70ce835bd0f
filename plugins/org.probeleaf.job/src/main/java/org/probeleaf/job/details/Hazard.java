// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.details;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What can hurt the person, or the unit, in this job. The cautions are general information; numbers in them are for
 * warning, never for permission.
 */
public enum Hazard {
    /** The unit is fed from the mains. */
    MAINS("mains", "Mains voltage", "Parts inside are at mains voltage while it is plugged in, and the chassis may be"
            + " too. Work dead wherever possible: unplug, wait, prove it dead with a meter known to work. Never work"
            + " live alone."),
    /** Capacitors hold a dangerous charge. */
    CHARGED_CAPACITORS("capacitors", "Charged capacitors", "Large capacitors keep their charge after the unit is"
            + " unplugged. Discharge them through a resistor rated for it, never with a screwdriver, and measure"
            + " before touching; some recover part of their charge."),
    /** A picture tube with its high voltage. */
    PICTURE_TUBE("picture-tube", "Picture tube", "The final anode carries tens of kilovolts and stays charged for"
            + " days; the tube is evacuated glass and can implode. Leave it to people trained for it; wear eye"
            + " protection."),
    /** Cells that can burn. */
    BATTERY_PACK("battery", "Battery pack", "Cells deliver very large currents, burn when shorted or punctured and"
            + " cannot be switched off. Take the pack out first; set a swollen, hot or leaking one aside outdoors and"
            + " do not charge it."),
    /** Parts that burn the skin. */
    HEAT("heat", "Hot parts", "Heatsinks, regulators, lamps and resistors burn the skin, also some time after"
            + " switching off. Let them cool; keep flammable things away; extract solder fume at its source."),
    /** Parts that a spark kills. */
    STATIC("static", "Static-sensitive parts", "Discharges too small to feel destroy parts. Work on an earthed mat"
            + " with a wrist strap that has its resistor; take the strap off for any live work.");

    /** Closes every caution. */
    public static final String CLOSING = "This is general information: follow the maker's instructions, local"
            + " electrical codes and safety law, and leave work you are not qualified or licensed for to someone who"
            + " is.";

    private final String key;
    private final String title;
    private final String caution;

    Hazard(String key, String title, String caution) {
        this.key = key;
        this.title = title;
        this.caution = caution;
    }

    /** Its short name as typed and stored ({@code "mains"}). */
    public String key() {
        return key;
    }

    /** Its name for a person ({@code "Mains voltage"}). */
    public String title() {
        return title;
    }

    /** Two or three sentences for a person, without {@link #CLOSING}. */
    public String caution() {
        return caution;
    }

    /**
     * Reads a hazard.
     *
     * @param text its {@link #key()}, letter case and spaces round it ignored
     * @throws IllegalArgumentException with one sentence for a person where there is no such hazard
     */
    public static Hazard parse(String text) {
        String t = text.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        for (Hazard h : values()) {
            if (h.key.equals(t) || h.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(t)) {
                return h;
            }
        }
        throw new IllegalArgumentException("there is no hazard \"" + text.strip() + "\"; known are "
                + Arrays.stream(values()).map(Hazard::key).collect(Collectors.joining(", ")));
    }
}
