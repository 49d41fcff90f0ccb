#include "stock_remedy_list.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/access.h"
#include "base/words.h"

/* Less is no change that a maker would notice. */
#define LEAST_GRAMS 0.5
#define LEAST_MM 0.5

struct _RwStockRemedyList
{
  GtkBox parent;

  const GPtrArray *remedies;
};

G_DEFINE_FINAL_TYPE (RwStockRemedyList, rw_stock_remedy_list, GTK_TYPE_BOX)

static guint apply_signal;

static GQuark
place_quark (void)
{
  return g_quark_from_static_string ("rw-stock-remedy");
}

static void
on_apply (GtkWidget *button, RwStockRemedyList *self)
{
  guint place = GPOINTER_TO_UINT (g_object_get_qdata (G_OBJECT (button), place_quark ()));

  g_signal_emit (self, apply_signal, 0, g_ptr_array_index (self->remedies, place));
}

static char *
more_words (double more, const char *unit, RwStyle style)
{
  g_autofree char *words = rw_number_words (more, unit, style);

  return g_strdup_printf ("%s%s", more > 0 ? "+" : "", words);
}

/* What the instrument comes to, where that is another. */
static void
add_weight (GString *words, const RwStockRemedy *remedy, RwStyle style)
{
  g_autofree char *mass = NULL, *mass_more = NULL, *balance = NULL, *balance_more = NULL;

  if (!isfinite (remedy->mass_more + remedy->balance_more)
      || (fabs (remedy->mass_more) < LEAST_GRAMS && fabs (remedy->balance_more) < LEAST_MM))
    return;
  mass = rw_number_words (remedy->mass, "g", style);
  mass_more = more_words (remedy->mass_more, "g", style);
  balance = rw_number_words (remedy->balance, "mm", style);
  balance_more = more_words (remedy->balance_more, "mm", style);
  g_string_append_c (words, '\n');
  g_string_append_printf (words, _("The instrument then: %s (%s), balanced %s (%s) from the nut"), mass, mass_more,
                          balance, balance_more);
}

/* Each change on a line. */
static char *
words_of (const RwStockRemedy *remedy, RwStyle style)
{
  GString *words = g_string_new (NULL);

  for (guint i = 0; i < remedy->changes->len; i++)
    {
      const RwRemedy *change = g_ptr_array_index (remedy->changes, i);
      g_autofree char *line = rw_remedy_words (change, _(change->pattern), style);

      g_string_append_printf (words, "%s%s", i > 0 ? "\n" : "", line);
    }
  if (remedy->missing > 0)
    g_string_append_printf (words, ngettext ("\nThen %d piece is still missing", "\nThen %d pieces are still missing",
                                             (gulong) remedy->missing), remedy->missing);
  add_weight (words, remedy, style);
  return g_string_free (words, FALSE);
}

static void
add_remedy (RwStockRemedyList *self, guint place, RwStyle style)
{
  g_autofree char *words = words_of (g_ptr_array_index (self->remedies, place), style);
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8), *button = gtk_button_new_with_label (_("Apply"));
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_widget_set_valign (button, GTK_ALIGN_START);
  rw_access_describe (button, words);
  g_object_set_qdata (G_OBJECT (button), place_quark (), GUINT_TO_POINTER (place));
  g_signal_connect_object (button, "clicked", G_CALLBACK (on_apply), self, 0);
  gtk_box_append (GTK_BOX (row), label);
  gtk_box_append (GTK_BOX (row), button);
  gtk_box_append (GTK_BOX (self), row);
}

void
rw_stock_remedy_list_show (RwStockRemedyList *self, const GPtrArray *remedies, RwStyle style)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_box_remove (GTK_BOX (self), child);
  self->remedies = remedies;
  gtk_widget_set_visible (GTK_WIDGET (self), remedies != NULL && remedies->len > 0);
  for (guint i = 0; remedies != NULL && i < remedies->len; i++)
    add_remedy (self, i, style);
}

static void
rw_stock_remedy_list_class_init (RwStockRemedyListClass *klass)
{
  apply_signal = g_signal_new ("apply", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE,
                               1, G_TYPE_POINTER);
}

static void
rw_stock_remedy_list_init (RwStockRemedyList *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 6);
  gtk_widget_set_margin_start (GTK_WIDGET (self), 8);
  gtk_widget_set_margin_end (GTK_WIDGET (self), 8);
}

GtkWidget *
rw_stock_remedy_list_new (void)
{
  return g_object_new (RW_TYPE_STOCK_REMEDY_LIST, NULL);
}
