#include "project_file.h"

#include "project_member.h"

char *
rw_project_to_text (const RwProject *project)
{
  RwJsonWriter writer = rw_json_writer (g_string_new (NULL));

  rw_json_begin (&writer, '{');
  rw_json_name (&writer, "rimwright");
  g_string_append_printf (writer.out, "%d", RW_FILE_VERSION);
  for (int i = 0; i < rw_members_count; i++)
    rw_members[i].write (&writer, project);
  rw_member_write_unknown (&writer, project, "");
  rw_json_end (&writer, '}');
  g_string_append_c (writer.out, '\n');
  return g_string_free (writer.out, FALSE);
}
