package fairpull.io.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.KeyDeserializer;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.AnnotatedMember;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.CurveSettings;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Gate;
import fairpull.domain.plan.MovingMass;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.ScoredWindow;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PullId;
import fairpull.domain.unit.PlainNumber;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.io.IOException;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Function;

/** How the domain's records become JSON and come back: strict, sorted, numbers as shortest plain decimals. */
final class Mapper {
    /** Written for an infinite number, which means “taken as known” where degrees of freedom stand. */
    private static final String INFINITE = "inf";

    private static final ObjectMapper STRICT = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(scalars())
            .annotationIntrospector(new HouseNames())
            .addMixIn(Definition.class, DefinitionKinds.class)
            .addMixIn(Gate.Limit.class, LimitKinds.class)
            .addMixIn(LogEntry.class, EntryKinds.class)
            .addMixIn(Session.class, SessionFields.class)
            .addMixIn(Claim.class, ClaimFields.class)
            .addMixIn(LogEntry.PullTaken.class, PullTakenFields.class)
            .addMixIn(LogRecord.class, LineFields.class)
            .addMixIn(LogJson.Body.class, LineFields.class)
            .addMixIn(CurveSettings.class, WrittenWherePresent.class)
            .addMixIn(ScoredWindow.class, WrittenWherePresent.class)
            .addMixIn(MovingMass.class, WrittenWherePresent.class)
            .addMixIn(Rig.class, RigFields.class)
            .defaultSetterInfo(JsonSetter.Value.forContentNulls(Nulls.FAIL))
            .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
            .build();

    private Mapper() {
    }

    /** {@return the mapper; its plain output is canonical: sorted, without blanks} */
    static ObjectMapper strict() {
        return STRICT;
    }

    /** {@return a writer for people: the same content, indented, with line feeds on every system} */
    static ObjectWriter indented() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        return STRICT.writer(printer);
    }

    /** {@return how a constant is written: in small letters, its words joined by hyphens, or as the one letter that it is} */
    static String word(Enum<?> constant) {
        String name = constant.name();
        return name.length() == 1 ? name : name.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static SimpleModule scalars() {
        SimpleModule module = new SimpleModule();
        module.addSerializer(Double.class, new NumberWriter());
        module.addSerializer(double.class, new NumberWriter());
        module.addDeserializer(Double.class, new NumberReader());
        module.addDeserializer(double.class, new NumberReader());
        text(module, Unit.class, Unit::symbol, Units::findOrAsTyped, "a unit");
        text(module, PullId.class, PullId::toString, text -> PullId.parse(text).orElseThrow(), "a pull such as B1-3 or A1-W2");
        text(module, OffsetDateTime.class, OffsetDateTime::toString, OffsetDateTime::parse, "a time such as 2026-05-09T09:42:00+02:00");
        text(module, LocalTime.class, LocalTime::toString, LocalTime::parse, "a time of day such as 09:30");
        module.addKeySerializer(Condition.class, writer((generator, condition) -> generator.writeFieldName(condition.id())));
        module.addKeyDeserializer(Condition.class, new KeyDeserializer() {
            @Override
            public Object deserializeKey(String key, DeserializationContext context) throws IOException {
                for (Condition condition : Condition.values()) {
                    if (condition.id().equals(key)) {
                        return condition;
                    }
                }
                return context.handleWeirdKey(Condition.class, key, "no such condition");
            }
        });
        return module;
    }

    private static <T> void text(SimpleModule module, Class<T> type, Function<T, String> write, Function<String, T> read, String form) {
        module.addSerializer(type, writer((generator, value) -> generator.writeString(write.apply(value))));
        module.addDeserializer(type, new JsonDeserializer<T>() {
            @Override
            public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
                if (parser.currentToken() != JsonToken.VALUE_STRING) {
                    throw new JsonTrouble.Refused(parser, "expected " + form);
                }
                try {
                    return read.apply(parser.getText());
                } catch (RuntimeException malformed) {
                    throw new JsonTrouble.Refused(parser, "expected " + form + ", found “" + parser.getText() + "”");
                }
            }
        });
    }

    private interface Write<T> {
        void to(JsonGenerator generator, T value) throws IOException;
    }

    private static <T> JsonSerializer<T> writer(Write<T> write) {
        return new JsonSerializer<>() {
            @Override
            public void serialize(T value, JsonGenerator generator, SerializerProvider provider) throws IOException {
                write.to(generator, value);
            }
        };
    }

    private static final class NumberWriter extends JsonSerializer<Double> {
        @Override
        public void serialize(Double value, JsonGenerator generator, SerializerProvider provider) throws IOException {
            if (value.isNaN() || value == Double.NEGATIVE_INFINITY) {
                throw new IllegalArgumentException("a file cannot hold the number " + value);
            }
            if (value.isInfinite()) {
                generator.writeString(INFINITE);
            } else {
                generator.writeNumber(PlainNumber.shortest(value));
            }
        }
    }

    private static final class NumberReader extends StdScalarDeserializer<Double> {
        NumberReader() {
            super(Double.class);
        }

        @Override
        public Double deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            if (parser.currentToken().isNumeric()) {
                double number = parser.getDoubleValue();
                if (!Double.isFinite(number)) {
                    throw new JsonTrouble.Refused(parser, "number out of range");
                }
                return number;
            }
            if (parser.currentToken() == JsonToken.VALUE_STRING && parser.getText().equals(INFINITE)) {
                return Double.POSITIVE_INFINITY;
            }
            throw new JsonTrouble.Refused(parser, "expected a number, found " + parser.getText());
        }

        @Override
        public Double getNullValue(DeserializationContext context) throws JsonMappingException {
            throw new JsonTrouble.Refused(context.getParser(), "expected a number, found null");
        }
    }

    /** Enum constants as lower-case words joined by hyphens; all but optional fields must be there. */
    private static final class HouseNames extends JacksonAnnotationIntrospector {
        private static final long serialVersionUID = 1;

        @Override
        public String[] findEnumValues(MapperConfig<?> config, AnnotatedClass type, Enum<?>[] values,
                String[] names) {
            for (int i = 0; i < values.length; i++) {
                names[i] = word(values[i]);
            }
            return names;
        }

        @Override
        public Boolean hasRequiredMarker(AnnotatedMember member) {
            Class<?> type = member.getRawType();
            return type != Optional.class && type != OptionalDouble.class && type != OptionalInt.class && type != OptionalLong.class;
        }
    }

    /** What joined the log later is not written where absent, so that the hashes of older logs stand. */
    private interface PullTakenFields {
        @JsonInclude(JsonInclude.Include.NON_ABSENT)
        Optional<Integer> numberInFile();

        @JsonInclude(JsonInclude.Include.NON_ABSENT)
        Optional<String> readAnew();
    }

    private interface LineFields {
        @JsonInclude(JsonInclude.Include.NON_ABSENT)
        Optional<Integer> following();
    }

    /** What came into the plan later is not written where it is absent: the seals of plans without it must stand. */
    private interface SessionFields {
        @JsonInclude(JsonInclude.Include.NON_ABSENT)
        Optional<Hours> hours();
    }

    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    private interface WrittenWherePresent {
    }

    private interface ClaimFields {
        @JsonInclude(JsonInclude.Include.NON_ABSENT)
        OptionalDouble speedRadPerS();
    }

    private interface RigFields {
        @JsonInclude(JsonInclude.Include.NON_ABSENT)
        Optional<MovingMass> movingMass();
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Definition.MeanOverBand.class, name = "mean-over-band"),
        @JsonSubTypes.Type(value = Definition.Peak.class, name = "peak"),
        @JsonSubTypes.Type(value = Definition.AtSpeed.class, name = "at-speed"),
        @JsonSubTypes.Type(value = Definition.Elapsed.class, name = "elapsed"),
        @JsonSubTypes.Type(value = Definition.Response.class, name = "response"),
        @JsonSubTypes.Type(value = Definition.Typed.class, name = "typed")})
    private interface DefinitionKinds {
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Gate.Window.class, name = "window"),
        @JsonSubTypes.Type(value = Gate.NearReference.class, name = "near-reference")})
    private interface LimitKinds {
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = LogEntry.Sealed.class, name = "sealed"),
        @JsonSubTypes.Type(value = LogEntry.Amended.class, name = "amended"),
        @JsonSubTypes.Type(value = LogEntry.PullTaken.class, name = "pull-taken"),
        @JsonSubTypes.Type(value = LogEntry.PullAborted.class, name = "pull-aborted"),
        @JsonSubTypes.Type(value = LogEntry.Excluded.class, name = "excluded"),
        @JsonSubTypes.Type(value = LogEntry.Readmitted.class, name = "readmitted"),
        @JsonSubTypes.Type(value = LogEntry.ConditionsNoted.class, name = "conditions"),
        @JsonSubTypes.Type(value = LogEntry.GateOverridden.class, name = "gate-overridden"),
        @JsonSubTypes.Type(value = LogEntry.Remark.class, name = "remark"),
        @JsonSubTypes.Type(value = LogEntry.Look.class, name = "look"),
        @JsonSubTypes.Type(value = LogEntry.PullRun.class, name = "pull-run"),
        @JsonSubTypes.Type(value = LogEntry.Swap.class, name = "swap"),
        @JsonSubTypes.Type(value = LogEntry.TakenBack.class, name = "taken-back"),
        @JsonSubTypes.Type(value = LogEntry.DayEnded.class, name = "day-ended")})
    private interface EntryKinds {
    }
}
