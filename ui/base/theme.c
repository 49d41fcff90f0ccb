#include "theme.h"

#include <string.h>

#include "canvas_view.h"
#include "rimwright-resources.h"

#define PROVIDER_KEY "rw-colours"
#define LEAST_TEXT 0.8
#define MOST_TEXT 3.0

/* With high contrast nothing stays in the background by being faint. */
#define CONTRAST_RULES \
  ".dim-label, .step-waiting { opacity: 1; }" \
  ".form-row.marked, list.findings > row:selected, list.steps > row:selected { background-color: transparent; }" \
  ".strip button:checked { box-shadow: inset 0 -3px @rw_accent; }"

static double
luminance (const GdkRGBA *colour)
{
  return 0.2126 * colour->red + 0.7152 * colour->green + 0.0722 * colour->blue;
}

gboolean
rw_theme_is_dark (GtkWidget *widget)
{
  GdkRGBA text;

  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &text);
  return luminance (&text) > 0.5;
}

/* GTK's own theme of high contrast, by its present and its former names. */
static gboolean
wants_contrast (GtkSettings *settings)
{
  const char *forced = g_getenv ("GTK_THEME");
  g_autofree char *name = NULL;

  g_object_get (settings, "gtk-theme-name", &name, NULL);
  return g_str_has_prefix (forced != NULL ? forced : name, "HighContrast")
         || strstr (forced != NULL ? forced : name, "hc") != NULL;
}

static const RwPalette *
palette (gboolean dark, gboolean contrast)
{
  if (contrast)
    return dark ? &rw_palette_contrast_dark : &rw_palette_contrast;
  return dark ? &rw_palette_dark : &rw_palette_light;
}

const RwPalette *
rw_theme_palette (GtkWidget *widget)
{
  return palette (rw_theme_is_dark (widget), wants_contrast (gtk_widget_get_settings (widget)));
}

double
rw_theme_text_scale (GtkWidget *widget)
{
  int dpi = 0;

  g_object_get (gtk_widget_get_settings (widget), "gtk-xft-dpi", &dpi, NULL);
  return dpi > 0 ? CLAMP (dpi / 1024.0 / 96, LEAST_TEXT, MOST_TEXT) : 1;
}

double
rw_theme_paper_scale (GtkWidget *widget)
{
  return RW_PX_PER_PAPER_MM * rw_theme_text_scale (widget);
}

static const GdkRGBA severities[2][3] = {
  { { 0.70f, 0.10f, 0.08f, 1 }, { 0.54f, 0.33f, 0.00f, 1 }, { 0.25f, 0.36f, 0.45f, 1 } },
  { { 1.00f, 0.54f, 0.48f, 1 }, { 0.96f, 0.73f, 0.32f, 1 }, { 0.64f, 0.76f, 0.86f, 1 } },
};

const GdkRGBA *
rw_theme_severity (GtkWidget *widget, RwSeverity severity)
{
  return &severities[rw_theme_is_dark (widget)][severity];
}

/* Before there is a widget to ask: what the settings say. */
static gboolean
settings_are_dark (GtkSettings *settings)
{
  const char *forced = g_getenv ("GTK_THEME");
  g_autofree char *name = NULL;
  gboolean dark;

  g_object_get (settings, "gtk-theme-name", &name, "gtk-application-prefer-dark-theme", &dark, NULL);
  if (forced != NULL)
    return g_str_has_suffix (forced, ":dark") || g_str_has_suffix (forced, "-dark")
           || g_str_has_suffix (forced, "Inverse");
  return dark || g_str_has_suffix (name, "-dark") || g_str_has_suffix (name, "Inverse");
}

/* The accent is that of the drawing, so that grips, focus and selection are of one colour; a refused entry
 * has the colour of what stops. */
static void
update_colours (GtkSettings *settings)
{
  GtkCssProvider *provider = g_object_get_data (G_OBJECT (settings), PROVIDER_KEY);
  gboolean dark = settings_are_dark (settings);
  gboolean contrast = wants_contrast (settings);
  const RwColour *accent = &palette (dark, contrast)->accent;
  GdkRGBA colour = { (float) accent->r, (float) accent->g, (float) accent->b, 1 };
  g_autofree char *accent_text = gdk_rgba_to_string (&colour);
  g_autofree char *stop_text = gdk_rgba_to_string (&severities[dark][RW_STOP]);
  g_autofree char *css = g_strdup_printf ("@define-color rw_accent %s; @define-color rw_stop %s; %s", accent_text,
                                          stop_text, contrast ? CONTRAST_RULES : "");

  gtk_css_provider_load_from_data (provider, css, -1);
}

static void
add_provider (GdkDisplay *display, GtkCssProvider *provider, guint over)
{
  gtk_style_context_add_provider_for_display (display, GTK_STYLE_PROVIDER (provider),
                                              GTK_STYLE_PROVIDER_PRIORITY_APPLICATION + over);
}

void
rw_theme_install (GdkDisplay *display)
{
  GtkSettings *settings = gtk_settings_get_for_display (display);
  g_autoptr (GtkCssProvider) sheet = NULL;
  GtkCssProvider *colours;

  if (g_object_get_data (G_OBJECT (settings), PROVIDER_KEY) != NULL)
    return;

  /* A static library's resources are linked in only by name. */
  g_resources_register (rimwright_get_resource ());

  colours = gtk_css_provider_new ();
  g_object_set_data_full (G_OBJECT (settings), PROVIDER_KEY, colours, g_object_unref);
  update_colours (settings);
  add_provider (display, colours, 1);
  g_signal_connect (settings, "notify::gtk-application-prefer-dark-theme", G_CALLBACK (update_colours), NULL);
  g_signal_connect (settings, "notify::gtk-theme-name", G_CALLBACK (update_colours), NULL);

  sheet = gtk_css_provider_new ();
  gtk_css_provider_load_from_resource (sheet, "/org/rimwright/Rimwright/style.css");
  add_provider (display, sheet, 0);
}
