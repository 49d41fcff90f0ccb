#include "theme.h"

#include "paint_cairo.h"
#include "rimwright-resources.h"

#define ACCENT_KEY "rw-accent-provider"

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

/* Before there is a widget to ask: what the settings say. */
static gboolean
settings_are_dark (GtkSettings *settings)
{
  const char *forced = g_getenv ("GTK_THEME");
  g_autofree char *name = NULL;
  gboolean dark;

  g_object_get (settings, "gtk-theme-name", &name, "gtk-application-prefer-dark-theme", &dark, NULL);
  if (forced != NULL)
    return g_str_has_suffix (forced, ":dark") || g_str_has_suffix (forced, "Inverse");
  return dark || g_str_has_suffix (name, "-dark") || g_str_has_suffix (name, "Inverse");
}

/* The accent of the drawing, so that grips, focus and selection are of one colour. */
static void
update_accent (GtkSettings *settings)
{
  GtkCssProvider *provider = g_object_get_data (G_OBJECT (settings), ACCENT_KEY);
  const RwPalette *palette = settings_are_dark (settings) ? &rw_palette_dark : &rw_palette_light;
  g_autofree char *css = g_strdup_printf ("@define-color rw_accent #%02x%02x%02x;",
                                          (guint) (palette->accent.r * 255 + 0.5),
                                          (guint) (palette->accent.g * 255 + 0.5),
                                          (guint) (palette->accent.b * 255 + 0.5));

  gtk_css_provider_load_from_data (provider, css, -1);
}

static void
add_provider (GdkDisplay *display, GtkCssProvider *provider)
{
  gtk_style_context_add_provider_for_display (display, GTK_STYLE_PROVIDER (provider),
                                              GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
}

void
rw_theme_install (GdkDisplay *display)
{
  GtkSettings *settings = gtk_settings_get_for_display (display);
  g_autoptr (GtkCssProvider) sheet = NULL;
  GtkCssProvider *accent;

  if (g_object_get_data (G_OBJECT (settings), ACCENT_KEY) != NULL)
    return;

  /* A static library's resources are linked in only by name. */
  g_resources_register (rimwright_get_resource ());

  accent = gtk_css_provider_new ();
  g_object_set_data_full (G_OBJECT (settings), ACCENT_KEY, accent, g_object_unref);
  update_accent (settings);
  add_provider (display, accent);
  g_signal_connect (settings, "notify::gtk-application-prefer-dark-theme", G_CALLBACK (update_accent), NULL);
  g_signal_connect (settings, "notify::gtk-theme-name", G_CALLBACK (update_accent), NULL);

  sheet = gtk_css_provider_new ();
  gtk_css_provider_load_from_resource (sheet, "/org/rimwright/Rimwright/style.css");
  add_provider (display, sheet);
}
