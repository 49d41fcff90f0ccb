#include "string_set_choice.h"

#include <glib/gi18n.h>

#include "base/access.h"
#include "table/named_set.h"

static void
take (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  RwDocument *document = user_data;
  int row = g_variant_get_int32 (parameter);

  rw_document_settle (document);
  rw_document_set_text (document, RW_P_strings_set, rw_string_sets[row].id, NULL);
  rw_document_settle (document);
}

static GMenuModel *
build_menu (void)
{
  GMenu *menu = g_menu_new ();

  for (int i = 0; i < rw_string_sets_count; i++)
    {
      g_autoptr (GMenuItem) item = g_menu_item_new (_(rw_string_sets[i].label), NULL);

      g_menu_item_set_action_and_target (item, "sets.take", "i", i);
      g_menu_append_item (menu, item);
    }
  return G_MENU_MODEL (menu);
}

GtkWidget *
rw_string_set_choice_new (RwDocument *document)
{
  g_autoptr (GSimpleActionGroup) actions = g_simple_action_group_new ();
  g_autoptr (GSimpleAction) action = g_simple_action_new ("take", G_VARIANT_TYPE_INT32);
  g_autoptr (GMenuModel) menu = build_menu ();
  GtkWidget *button = gtk_menu_button_new ();

  g_signal_connect_object (action, "activate", G_CALLBACK (take), document, 0);
  g_action_map_add_action (G_ACTION_MAP (actions), G_ACTION (action));
  gtk_widget_insert_action_group (button, "sets", G_ACTION_GROUP (actions));
  gtk_menu_button_set_menu_model (GTK_MENU_BUTTON (button), menu);
  gtk_menu_button_set_label (GTK_MENU_BUTTON (button), _("Sets"));
  rw_access_title (button, _("Sets of strings by name"));
  return button;
}
