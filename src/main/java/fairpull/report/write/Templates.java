package fairpull.report.write;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;

/** The templates of pages, which escape all text but the charts that the program draws itself. */
final class Templates {
    private static final Configuration TEMPLATES = templates();

    private Templates() {
    }

    /** {@return a template filled with a page} */
    static String filled(String template, Map<String, Object> page) {
        StringWriter out = new StringWriter();
        try {
            TEMPLATES.getTemplate(template).process(page, out);
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        } catch (TemplateException trouble) {
            throw new IllegalStateException("the template " + template + " does not fit its page", trouble);
        }
        return out.toString();
    }

    private static Configuration templates() {
        Configuration templates = new Configuration(Configuration.VERSION_2_3_34);
        templates.setClassForTemplateLoading(Templates.class, "/fairpull/report");
        templates.setDefaultEncoding("UTF-8");
        templates.setOutputFormat(HTMLOutputFormat.INSTANCE);
        templates.setRecognizeStandardFileExtensions(true);
        templates.setLocale(Locale.ROOT);
        templates.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        templates.setLogTemplateExceptions(false);
        templates.setWrapUncheckedExceptions(true);
        return templates;
    }
}
