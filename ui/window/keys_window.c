#include "keys_window.h"

#include <glib/gi18n.h>

/* Pixels. */
#define WIDTH 560
#define HEIGHT 640

#define TITLE_CHARS 24

/* By an action, or by keys that a part of the window listens to: several apart by spaces, a run of them as "1...9". */
typedef struct
{
  const char *title; /* alone: of a group */
  const char *action;
  const char *keys;
} Line;

static const Line lines[] = {
  { N_("Build"), NULL, NULL },
  { N_("New"), "win.new", NULL },
  { N_("Open"), "win.open", NULL },
  { N_("Save"), "win.save", NULL },
  { N_("Save under another name"), "win.save-as", NULL },
  { N_("Write papers"), "win.papers", NULL },
  { N_("Changes"), NULL, NULL },
  { N_("Undo"), "win.undo", NULL },
  { N_("Redo"), "win.redo", NULL },
  { N_("A step more or less in a field"), NULL, "Up Down" },
  { N_("Put a field back"), NULL, "Escape" },
  { N_("Window"), NULL, NULL },
  { N_("Menu"), NULL, "F10" },
  { N_("Find a value"), "win.find", NULL },
  { N_("Form"), "win.show-form", NULL },
  { N_("Findings and dimensions"), "win.show-drawer", NULL },
  { N_("Second sheet beside"), "win.show-beside", NULL },
  { N_("Millimetres, inches, fractions"), NULL, "<Control>1...<Control>3" },
  { N_("Guide"), "win.guide", NULL },
  { N_("These keys"), "win.keys", NULL },
  { N_("Sheet"), NULL, NULL },
  { N_("Show a view"), NULL, "1...9" },
  { N_("The view before, the view after"), NULL, "Page_Up Page_Down" },
  { N_("Next grip, grip before"), NULL, "Tab <Shift>Tab" },
  { N_("Move a grip"), NULL, "Left Right" },
  { N_("Move a grip finely"), NULL, "<Shift>Left" },
  { N_("Move a grip by ten steps"), NULL, "<Control>Left" },
  { N_("Type a value for a grip"), NULL, "Return" },
  { N_("Put a drag back, leave a grip"), NULL, "Escape" },
  { N_("Larger, smaller, all of it"), NULL, "plus minus 0" },
};

/* ---- how keys are written ---- */

static char *
key_words (const char *accelerator)
{
  guint key;
  GdkModifierType modifiers;

  if (!gtk_accelerator_parse (accelerator, &key, &modifiers))
    g_return_val_if_reached (g_strdup (accelerator));
  return gtk_accelerator_get_label (key, modifiers);
}

/* "1–9" of "1...9". */
static char *
run_words (const char *run)
{
  g_auto (GStrv) ends = g_strsplit (run, "...", 2);
  g_autofree char *first = key_words (ends[0]), *last = ends[1] != NULL ? key_words (ends[1]) : NULL;

  return last != NULL ? g_strdup_printf ("%s–%s", first, last) : g_steal_pointer (&first);
}

static GStrv
keys_of (GtkWindow *parent, const Line *line)
{
  if (line->action == NULL)
    return g_strsplit (line->keys, " ", -1);
  return gtk_application_get_accels_for_action (gtk_window_get_application (parent), line->action);
}

/* ---- building ---- */

static GtkWidget *
new_keys (char **keys)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  for (char **key = keys; *key != NULL; key++)
    {
      g_autofree char *words = run_words (*key);
      GtkWidget *cap = gtk_label_new (words);

      /* As on the keys themselves, in every language. */
      gtk_widget_set_direction (cap, GTK_TEXT_DIR_LTR);
      gtk_widget_add_css_class (cap, "key");
      gtk_box_append (GTK_BOX (box), cap);
    }
  gtk_widget_set_valign (box, GTK_ALIGN_CENTER);
  return box;
}

static void
add_line (GtkGrid *grid, GtkWindow *parent, const Line *line, int place)
{
  GtkWidget *title = gtk_label_new (_(line->title));
  g_auto (GStrv) keys = NULL;

  gtk_label_set_xalign (GTK_LABEL (title), 0);
  gtk_label_set_wrap (GTK_LABEL (title), TRUE);
  gtk_label_set_width_chars (GTK_LABEL (title), TITLE_CHARS);
  gtk_widget_set_hexpand (title, TRUE);
  gtk_grid_attach (grid, title, 0, place, 1, 1);
  if (line->action == NULL && line->keys == NULL)
    {
      gtk_widget_add_css_class (title, "heading");
      return;
    }
  keys = keys_of (parent, line);
  gtk_grid_attach (grid, new_keys (keys), 1, place, 1, 1);
}

static GtkWidget *
new_list (GtkWindow *parent)
{
  GtkWidget *grid = gtk_grid_new (), *scroller = gtk_scrolled_window_new ();

  gtk_grid_set_row_spacing (GTK_GRID (grid), 6);
  gtk_grid_set_column_spacing (GTK_GRID (grid), 18);
  gtk_widget_add_css_class (grid, "keys");
  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    add_line (GTK_GRID (grid), parent, &lines[i], (int) i);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), grid);
  /* The arrow keys scroll it. */
  gtk_widget_set_focusable (scroller, TRUE);
  return scroller;
}

GtkWidget *
rw_keys_window_new (GtkWindow *parent)
{
  GtkWidget *window = gtk_window_new ();
  GtkEventController *keys = gtk_shortcut_controller_new ();

  gtk_window_set_child (GTK_WINDOW (window), new_list (parent));
  gtk_window_set_title (GTK_WINDOW (window), _("Keys"));
  gtk_window_set_transient_for (GTK_WINDOW (window), parent);
  gtk_window_set_destroy_with_parent (GTK_WINDOW (window), TRUE);
  gtk_window_set_default_size (GTK_WINDOW (window), WIDTH, HEIGHT);
  gtk_shortcut_controller_add_shortcut (
      GTK_SHORTCUT_CONTROLLER (keys),
      gtk_shortcut_new (gtk_keyval_trigger_new (GDK_KEY_Escape, 0), gtk_named_action_new ("window.close")));
  gtk_widget_add_controller (window, keys);
  return window;
}
