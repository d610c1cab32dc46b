package org.bayledger.quantity;

import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;

/**
 * The unit symbols that the service knows, each with its exact conversion to SI, built from JSR 385
 * units.
 *
 * <p>The inch is 0.0254 m and the pound 0.45359237 kg exactly (international yard and pound, 1959);
 * standard gravity is 9.80665 m/s2 exactly (3rd CGPM, 1901); the US gallon is 231 in3 exactly.
 */
final class Units {

    /** SI value = factor x value + offset. */
    record Conversion(double factor, double offset) {

        double toSi(double value) {
            return factor * value + offset;
        }

        double fromSi(double si) {
            return (si - offset) / factor;
        }
    }

    private static final Map<String, Conversion> CONVERSIONS = conversions();

    private Units() {}

    /** The conversion of a symbol, or null where the symbol is unknown. */
    static @Nullable Conversion find(String symbol) {
        return CONVERSIONS.get(symbol);
    }

    /** The conversion of a symbol that the service itself names. */
    static Conversion get(String symbol) {
        Conversion conversion = CONVERSIONS.get(symbol);
        if (conversion == null) {
            throw new IllegalArgumentException("no unit " + symbol);
        }
        return conversion;
    }

    private static Map<String, Conversion> conversions() {
        Unit<?> gravity = METRE.divide(SECOND.pow(2)).multiply(new BigDecimal("9.80665"));
        Unit<?> inch = METRE.multiply(new BigDecimal("0.0254"));
        Unit<?> foot = inch.multiply(12);
        Unit<?> mile = foot.multiply(5280);
        Unit<?> pound = KILOGRAM.multiply(new BigDecimal("0.45359237"));
        Unit<?> poundForce = pound.multiply(gravity);
        Unit<?> kip = poundForce.multiply(1000);
        Unit<?> millimetre = METRE.divide(1000);
        Unit<?> kilonewton = NEWTON.multiply(1000);
        Unit<?> litre = CUBIC_METRE.divide(1000);
        Unit<?> gallon = inch.pow(3).multiply(231);
        Unit<?> minute = SECOND.multiply(60);
        Unit<?> hour = minute.multiply(60);

        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("mm", millimetre);
        units.put("cm", METRE.divide(100));
        units.put("m", METRE);
        units.put("in", inch);
        units.put("ft", foot);
        units.put("mm2", millimetre.pow(2));
        units.put("m2", METRE.pow(2));
        units.put("in2", inch.pow(2));
        units.put("ft2", foot.pow(2));
        units.put("mm3", millimetre.pow(3));
        units.put("in3", inch.pow(3));
        units.put("L", litre);
        units.put("mL", litre.divide(1000));
        units.put("m3", CUBIC_METRE);
        units.put("mm4", millimetre.pow(4));
        units.put("cm4", METRE.divide(100).pow(4));
        units.put("in4", inch.pow(4));
        units.put("mm6", millimetre.pow(6));
        units.put("cm6", METRE.divide(100).pow(6));
        units.put("in6", inch.pow(6));
        units.put("Pa", PASCAL);
        units.put("kPa", PASCAL.multiply(1_000));
        units.put("MPa", PASCAL.multiply(1_000_000));
        units.put("GPa", PASCAL.multiply(1_000_000_000));
        units.put("psf", poundForce.divide(foot.pow(2)));
        units.put("psi", poundForce.divide(inch.pow(2)));
        units.put("ksi", kip.divide(inch.pow(2)));
        units.put("N", NEWTON);
        units.put("kN", kilonewton);
        units.put("lbf", poundForce);
        units.put("kip", kip);
        units.put("N/m", NEWTON.divide(METRE));
        units.put("kN/m", kilonewton.divide(METRE));
        units.put("lbf/ft", poundForce.divide(foot));
        units.put("plf", poundForce.divide(foot));
        units.put("N*m", NEWTON.multiply(METRE));
        units.put("kN*m", kilonewton.multiply(METRE));
        units.put("lbf*in", poundForce.multiply(inch));
        units.put("lbf*ft", poundForce.multiply(foot));
        units.put("kip*in", kip.multiply(inch));
        units.put("kg", KILOGRAM);
        units.put("lb", pound);
        units.put("kg/m", KILOGRAM.divide(METRE));
        units.put("lb/ft", pound.divide(foot));
        units.put("kg/m2", KILOGRAM.divide(METRE.pow(2)));
        units.put("lb/ft2", pound.divide(foot.pow(2)));
        units.put("m/s", METRE.divide(SECOND));
        units.put("km/h", METRE.multiply(1000).divide(hour));
        units.put("mph", mile.divide(hour));
        units.put("degC", CELSIUS);
        units.put("degF", CELSIUS.multiply(5).divide(9).shift(-32));
        units.put("delta_degC", tech.units.indriya.unit.Units.KELVIN);
        units.put("delta_degF", tech.units.indriya.unit.Units.KELVIN.multiply(5).divide(9));
        units.put("deg", RADIAN.multiply(new BigDecimal(Double.toString(Math.PI))).divide(180));
        units.put("L/s", litre.divide(SECOND));
        units.put("L/min", litre.divide(minute));
        units.put("gal/min", gallon.divide(minute));
        units.put("cfm", foot.pow(3).divide(minute));
        units.put("L/s/m2", litre.divide(SECOND).divide(METRE.pow(2)));
        units.put("cfm/ft2", foot.divide(minute));
        units.put("L/min/m2", litre.divide(minute).divide(METRE.pow(2)));
        units.put("gal/h/ft2", gallon.divide(hour).divide(foot.pow(2)));
        units.put("s", SECOND);
        units.put("min", minute);
        units.put("h", hour);
        units.put("d", hour.multiply(24));
        units.put("1", AbstractUnit.ONE);

        Map<String, Conversion> conversions = new LinkedHashMap<>();
        units.forEach((symbol, unit) -> conversions.put(symbol, conversion(unit)));
        return Map.copyOf(conversions);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Conversion conversion(Unit<?> unit) {
        UnitConverter toSi = ((Unit) unit).getConverterTo(unit.getSystemUnit());
        double offset = toSi.convert(0.0);
        double factor =
                toSi.isLinear() ? toSi.convert(1.0) : (toSi.convert(1000.0) - offset) / 1000.0;
        return new Conversion(factor, offset);
    }
}
