#include "drawer.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "base/wrap_box.h"
#include "check/acceptance.h"
#include "care_pane.h"
#include "compare_pane.h"
#include "dimensions_pane.h"
#include "findings_pane.h"
#include "steps_pane.h"
#include "stock_pane.h"
#include "study_pane.h"

struct _RwDrawer
{
  GtkBox parent;

  RwDocument *document;
  RwDrawerPage      page;
  GtkWidget  *tabs[RW_PAGE_COUNT];
  GtkWidget  *panes[RW_PAGE_COUNT]; /* NULL until first shown */
  GtkWidget  *tools_of[RW_PAGE_COUNT]; /* NULL for a page without any */
  GtkWidget  *tools;                /* holds the tools of the page shown */
  GtkWidget  *stack;
};

G_DEFINE_FINAL_TYPE (RwDrawer, rw_drawer, GTK_TYPE_BOX)

static void
make_pane (RwDrawer *self, RwDrawerPage page)
{
  GtkWidget *pane = NULL, *tools = NULL;

  switch (page)
    {
    case RW_PAGE_DIMENSIONS:
      pane = rw_dimensions_pane_new (self->document);
      tools = rw_dimensions_pane_tools (RW_DIMENSIONS_PANE (pane));
      break;
    case RW_PAGE_STEPS:
      pane = rw_steps_pane_new (self->document);
      tools = rw_steps_pane_tools (RW_STEPS_PANE (pane));
      break;
    case RW_PAGE_STUDY:
      pane = rw_study_pane_new (self->document);
      tools = rw_study_pane_tools (RW_STUDY_PANE (pane));
      break;
    case RW_PAGE_CARE:
      pane = rw_care_pane_new (self->document);
      tools = rw_care_pane_tools (RW_CARE_PANE (pane));
      break;
    case RW_PAGE_STOCK:
      pane = rw_stock_pane_new (self->document);
      tools = rw_stock_pane_tools (RW_STOCK_PANE (pane));
      break;
    case RW_PAGE_COMPARE:
      pane = rw_compare_pane_new (self->document);
      tools = rw_compare_pane_tools (RW_COMPARE_PANE (pane));
      break;
    default:
      pane = rw_findings_pane_new (self->document);
      break;
    }
  self->panes[page] = pane;
  self->tools_of[page] = tools;
  gtk_stack_add_child (GTK_STACK (self->stack), pane);
  if (tools != NULL)
    gtk_box_append (GTK_BOX (self->tools), tools);
}

/* The page in front is made when the drawer comes into sight, not before. */
static void
bring_to_front (RwDrawer *self)
{
  if (!gtk_widget_get_mapped (GTK_WIDGET (self)))
    return;
  if (self->panes[self->page] == NULL)
    make_pane (self, self->page);
  gtk_stack_set_visible_child (GTK_STACK (self->stack), self->panes[self->page]);
  for (int page = 0; page < RW_PAGE_COUNT; page++)
    if (self->tools_of[page] != NULL)
      gtk_widget_set_visible (self->tools_of[page], page == (int) self->page);
  gtk_widget_set_visible (self->tools, self->tools_of[self->page] != NULL);
}

static gboolean
bring_to_front_later (gpointer user_data)
{
  bring_to_front (RW_DRAWER (user_data));
  return G_SOURCE_REMOVE;
}

/* After the first frame: the window stands before its lists are filled. */
static void
on_map (RwDrawer *self)
{
  g_idle_add_full (GDK_PRIORITY_REDRAW + 20, bring_to_front_later, g_object_ref (self), g_object_unref);
}

static void
on_tab (RwDrawer *self)
{
  for (int page = 0; page < RW_PAGE_COUNT; page++)
    if (gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (self->tabs[page])))
      self->page = page;
  bring_to_front (self);
}

static void
on_changed (RwDrawer *self)
{
  const GPtrArray *findings = rw_document_findings (self->document);
  guint count = rw_findings_open (findings, RW_STOP) + rw_findings_open (findings, RW_CAUTION)
                + rw_findings_open (findings, RW_NOTE);
  g_autofree char *text = count > 0 ? g_strdup_printf (_("Findings %u"), count) : g_strdup (_("Findings"));

  gtk_button_set_label (GTK_BUTTON (self->tabs[RW_PAGE_FINDINGS]), text);
}

/* ---- making and unmaking ---- */

static void
add_tab (RwDrawer *self, GtkWidget *tabs, RwDrawerPage page, const char *title)
{
  self->tabs[page] = gtk_toggle_button_new_with_label (title);
  gtk_button_set_has_frame (GTK_BUTTON (self->tabs[page]), FALSE);
  if (page > 0)
    gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (self->tabs[page]), GTK_TOGGLE_BUTTON (self->tabs[0]));
  g_signal_connect_object (self->tabs[page], "toggled", G_CALLBACK (on_tab), self, G_CONNECT_SWAPPED);
  rw_wrap_box_append (RW_WRAP_BOX (tabs), self->tabs[page]);
}

static void
build_bar (RwDrawer *self)
{
  GtkWidget *bar = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 4), *tabs = rw_wrap_box_new_empty (4);
  GtkWidget *close = gtk_button_new_from_icon_name ("window-close-symbolic");

  gtk_widget_add_css_class (bar, "strip");
  add_tab (self, tabs, RW_PAGE_FINDINGS, _("Findings"));
  add_tab (self, tabs, RW_PAGE_DIMENSIONS, _("Dimensions"));
  add_tab (self, tabs, RW_PAGE_STEPS, _("Steps"));
  add_tab (self, tabs, RW_PAGE_STUDY, _("Set-up"));
  add_tab (self, tabs, RW_PAGE_CARE, _("Care"));
  add_tab (self, tabs, RW_PAGE_STOCK, _("Stock"));
  add_tab (self, tabs, RW_PAGE_COMPARE, _("Compare"));
  gtk_widget_set_halign (self->tabs[RW_PAGE_COUNT - 1], GTK_ALIGN_START);
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->tabs[RW_PAGE_FINDINGS]), TRUE);

  self->tools = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  gtk_widget_set_halign (self->tools, GTK_ALIGN_END);
  gtk_widget_hide (self->tools);
  rw_wrap_box_append (RW_WRAP_BOX (tabs), self->tools);
  gtk_widget_set_hexpand (tabs, TRUE);
  gtk_box_append (GTK_BOX (bar), tabs);

  gtk_button_set_has_frame (GTK_BUTTON (close), FALSE);
  gtk_widget_set_valign (close, GTK_ALIGN_START);
  rw_access_title (close, _("Close the drawer"));
  gtk_actionable_set_action_name (GTK_ACTIONABLE (close), "win.show-drawer");
  gtk_box_append (GTK_BOX (bar), close);
  gtk_box_append (GTK_BOX (self), bar);
}

static void
rw_drawer_dispose (GObject *object)
{
  g_clear_object (&RW_DRAWER (object)->document);
  G_OBJECT_CLASS (rw_drawer_parent_class)->dispose (object);
}

static void
rw_drawer_class_init (RwDrawerClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = rw_drawer_dispose;
}

static void
rw_drawer_init (RwDrawer *self)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();

  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  self->stack = gtk_stack_new ();
  gtk_stack_set_hhomogeneous (GTK_STACK (self->stack), FALSE);
  build_bar (self);
  /* With large text a page may be wider than the window. */
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_AUTOMATIC, GTK_POLICY_NEVER);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), self->stack);
  gtk_widget_set_vexpand (scroller, TRUE);
  gtk_box_append (GTK_BOX (self), scroller);
  g_signal_connect (self, "map", G_CALLBACK (on_map), NULL);
}

GtkWidget *
rw_drawer_new (RwDocument *document)
{
  RwDrawer *self = g_object_new (RW_TYPE_DRAWER, NULL);

  self->document = g_object_ref (document);
  g_signal_connect_object (document, "noted", G_CALLBACK (on_changed), self, G_CONNECT_SWAPPED);
  on_changed (self);
  return GTK_WIDGET (self);
}

RwDrawerPage
rw_drawer_page (RwDrawer *self)
{
  return self->page;
}

void
rw_drawer_show (RwDrawer *self, RwDrawerPage page)
{
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->tabs[page]), TRUE);
}
