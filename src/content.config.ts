import { defineCollection } from 'astro:content';
import { lesson } from './entries/lesson.ts';
import { lessonLoader } from './entries/lesson-loader.ts';

export const collections = {
  lessons: defineCollection({ loader: lessonLoader(), schema: lesson }),
};
