import { type CollectionEntry, getCollection } from 'astro:content';

/** All lessons, in the order of the course. */
export async function lessonsInOrder(): Promise<CollectionEntry<'lessons'>[]> {
  const lessons = await getCollection('lessons');
  return lessons.sort((one, other) => one.data.order - other.data.order);
}
